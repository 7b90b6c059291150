"""A fish's long run: how hot the drag gets, how it starts and whether it judders.

views        the one page, at three addresses
asked        its sliders and choices
kept         run tests, worked out once
drawn        what the page shows for the answers
run_charts   temperature through the run and after it, the pull as the line comes tight
"""
