"""The sets of recordings with gold, as folders of tests/, in the order in which they were written. docs/accuracy.md says what each is for.
SPDX-License-Identifier: MIT
"""
# What rules, words and weights are made with.
READ = ("corpus", "recordings", "recordings/flawless", "recordings/second", "recordings/third", "recordings/fourth",
        "recordings/fifth", "recordings/sixth", "recordings/seventh", "recordings/eighth", "recordings/ninth",
        "recordings/tenth", "recordings/eleventh", "recordings/twelfth", "recordings/fourteenth")
# What else dishes are told apart with.
SPLIT_READ = READ + ("recordings/thirteenth",)
# What the weights of borders are made with. Which dishes are one is learned from what these weights find, and must see
# what they find in recordings that they have not seen.
BORDERS_READ = tuple(name for name in SPLIT_READ if name != "recordings/fourteenth")
ALL = SPLIT_READ + ("recordings/plain", "recordings/unseen")
