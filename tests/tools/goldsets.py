"""The sets of recordings with gold, as folders of tests/, in the order in which they were written. docs/accuracy.md says what each is for.
SPDX-License-Identifier: MIT
"""
# What rules, words and weights are made with.
READ = ("corpus", "recordings", "recordings/flawless", "recordings/second", "recordings/third", "recordings/fourth",
        "recordings/fifth", "recordings/sixth", "recordings/seventh", "recordings/eighth", "recordings/ninth",
        "recordings/tenth", "recordings/eleventh", "recordings/twelfth", "recordings/fourteenth")
BORDERS_READ = READ + ("recordings/thirteenth",)  # borders alone have learned from it
ALL = BORDERS_READ + ("recordings/plain", "recordings/unseen")
