#!/usr/bin/env python3
"""How long it takes to publish three hours of talk with 30 dishes, whole, start-up included: publish.py PROGRAM

The recording is made of the sample (three dishes) and of talk without a dish, in turn, times moved on, until it has
three hours. The processor's own time is printed beside the clock's, since other programs may be running.
SPDX-License-Identifier: MIT
"""
import os
import re
import resource
import statistics
import subprocess
import sys
import tempfile
import time

ROOT = os.path.dirname(os.path.dirname(os.path.dirname(os.path.abspath(__file__))))
TIME = re.compile(r"(\d\d):(\d\d):(\d\d),(\d\d\d)")
ROUNDS = 11
HOURS = 3
DISHES = 45  # thirty of them are heard as dishes of their own
# So that the dishes differ: what is named alike would be one dish that is returned to.
NAMES = {"lentil": "lentil bean carrot tomato pumpkin leek potato corn mushroom onion zucchini celery spinach turnip cabbage".split(),
         "chicken": "chicken lamb beef pork turkey salmon tuna tofu duck shrimp squid veal venison rabbit halloumi".split(),
         "apples": "apples pears peaches plums quinces apricots bananas figs mangoes nectarines cherries grapes oranges pineapples strawberries".split()}


def renamed(text, number):
    for name, others in NAMES.items():
        text = re.sub(rf"\b{name}\b", others[number % len(others)], text)
    return text


def seconds(match):
    hours, minutes, whole, millis = map(int, match.groups())
    return hours * 3600 + minutes * 60 + whole + millis / 1000


def stamp(value):
    millis = round(value * 1000)
    return f"{millis // 3600000:02}:{millis // 60000 % 60:02}:{millis // 1000 % 60:02},{millis % 1000:03}"


def talk():
    """Three dishes again and again, and what fills up the hours between them."""
    sample, chat = (open(os.path.join(ROOT, name), encoding="utf-8").read().strip()
                    for name in ("samples/hilltop-canteen.srt", "tests/corpus/no-dish.srt"))
    out, offset, rounds = [], 0.0, DISHES // 3
    for number in range(rounds):
        for text in [renamed(sample, number)] + [chat] * 20:
            if text is chat and offset > (number + 1) * HOURS * 3600 / rounds - 200:
                break
            out.append(TIME.sub(lambda m, by=offset: stamp(seconds(m) + by), text))
            offset += max(seconds(m) for m in TIME.finditer(text)) + 5
    return "\n\n".join(out) + "\n"


def processor_seconds():
    used = resource.getrusage(resource.RUSAGE_CHILDREN)
    return used.ru_utime + used.ru_stime


def main():
    program = os.path.abspath(sys.argv[1])
    with tempfile.TemporaryDirectory() as place:
        path, out = os.path.join(place, "long.srt"), os.path.join(place, "out")
        with open(path, "w", encoding="utf-8") as file:
            file.write(talk())
        taken, busy = [], processor_seconds()
        for _ in range(ROUNDS):
            begin = time.perf_counter()
            subprocess.run([program, "publish", "-q", "--despite-findings", "-o", out, path], check=True,
                           stderr=subprocess.DEVNULL)
            taken.append(time.perf_counter() - begin)
        busy = (processor_seconds() - busy) / ROUNDS
        names = os.listdir(out)
        dishes = sum(name.endswith(".jsonld") for name in names)
        size = sum(os.path.getsize(os.path.join(out, name)) for name in names)
        print(f"figure: three hours, {dishes} dishes, {len(names)} files, {size / 1e6:.1f} MB published in "
              f"{statistics.median(taken) * 1000:.0f} ms (median of {ROUNDS}), {busy * 1000:.0f} ms of them at work")


if __name__ == "__main__":
    main()
