"""What wears in a reel with such use, how its spool takes the cold, and how its line lies.

views        the one page, at three addresses
asked        its sliders and choices
kept         what was worked out, kept in this process
drawn        charts and words for the answers
"""
