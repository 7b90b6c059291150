"""Turning values into the reader's words, and typed words into values.

shown    quantities in the person's units
when     days, hours, minutes and promises
money    whole minor units in the shop's currency, both ways
asked    form fields that read a quantity, an amount or a day
"""
