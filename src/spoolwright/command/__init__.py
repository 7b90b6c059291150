"""The command line: one verb a file, each with SUMMARY, arguments(parser) and run(args)."""
