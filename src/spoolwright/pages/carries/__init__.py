"""What a reel carries: the load ladder, the pull as the line goes, the line that is wound on.

views        the one page, at three addresses
asked        its sliders and choices
"""
