"""The sets of recordings with gold, as folders of tests/, in the order in which they were written. docs/accuracy.md says what each is for.
SPDX-License-Identifier: MIT
"""
import glob

# What rules, words and weights are made with.
READ = ("corpus", "recordings", "recordings/flawless", "recordings/second", "recordings/third", "recordings/fourth",
        "recordings/fifth", "recordings/sixth", "recordings/seventh", "recordings/eighth", "recordings/ninth",
        "recordings/tenth", "recordings/eleventh", "recordings/twelfth", "recordings/fourteenth", "recordings/fifteenth")
# What steps are learned from. With the fifteenth set as well a step that is only announced ("what I'm going to do is add") is none.
STEPS_READ = tuple(name for name in READ if name != "recordings/fifteenth")
# What dishes are told apart with. With the fifteenth set as well they are told apart no better on recordings left out.
SPLIT_READ = tuple(name for name in READ if name != "recordings/fifteenth") + ("recordings/thirteenth",)
# What the weights of borders are made with. Which dishes are one is learned from what these weights find, and must see
# what they find in recordings that they have not seen.
BORDERS_READ = tuple(name for name in SPLIT_READ if name != "recordings/fourteenth")
ALL = SPLIT_READ + ("recordings/fifteenth", "recordings/plain", "recordings/unseen")
# Sets by the one that was written by the same hands, with which they are left out when weights of foods are tested.
WRITTEN_TOGETHER = {"recordings": "corpus", "recordings/flawless": "corpus", "recordings/second": "corpus",
                    "recordings/third": "corpus", "recordings/fourth": "corpus", "recordings/sixth": "recordings/fifth",
                    "recordings/seventh": "recordings/fifth", "recordings/eighth": "recordings/fifth",
                    "recordings/tenth": "recordings/ninth"}
# ... when odds of steps, and which dishes are one, are tested.
SAME_COOKS = {"recordings/flawless": "recordings", "recordings/third": "recordings/second",
              "recordings/fourth": "recordings/second"}


def golds_of(name):
    """The golds of a set, from the folder where the Makefile is."""
    return sorted(glob.glob(f"tests/{name}/*.gold.json"))
