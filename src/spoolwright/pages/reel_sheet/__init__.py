"""Reel sheets: what each model is made of, drawn in section and touched where it hurts.

views        the shelf of sheets, one sheet, its parts list, its text to take away
writing      a further version, a new sheet
look         what is asked of the drawing: line level, sizes or names, stack apart or together
leaf         one sheet as its page tells it; each part is worked out when the page asks for it
known        what is known of a part that was touched
expected     what the reel is expected to do, kept for the next time it is asked
"""
