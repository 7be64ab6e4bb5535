"""Log odds of facts, learned from cases, and the tables that they are written to.
SPDX-License-Identifier: MIT
"""
from sklearn.feature_extraction import DictVectorizer
from sklearn.linear_model import LogisticRegression


def learned(rows, right, penalty):
    """({fact: its weight}, the intercept) of a logistic regression with an L2 penalty. `rows`: each case's facts, and how often."""
    columns = DictVectorizer()
    table = columns.fit_transform(rows)
    fit = LogisticRegression(C=1 / penalty, solver="liblinear", max_iter=300, random_state=0)
    fit.fit(table, right)
    return dict(zip(columns.feature_names_, fit.coef_[0])), fit.intercept_[0]


def head_of(path, first):
    """The table's comments, and the names of its columns, of which that is the first."""
    with open(path, encoding="utf-8") as file:
        return [line for line in file if line.startswith(("#", first + "\t"))]


def write_table(path, first, rows):
    head = head_of(path, first)
    with open(path, "w", encoding="utf-8") as file:
        file.writelines(head)
        file.writelines("\t".join(map(str, row)) + "\n" for row in rows)
