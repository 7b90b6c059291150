"""How a reel casts: the path, the spool against the line, what would change it and what would not.

views        the one page, at three addresses
asked        its sliders and choices
ready        the compiled cast, made or fetched behind the page's back
kept         casts worked out once for what was asked
drawn        charts and words for the answers of the form
"""
