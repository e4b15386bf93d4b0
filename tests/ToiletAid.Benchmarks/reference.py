"""The same ranking arithmetic with vectorised NumPy, on the matrices that ReferenceComparison wrote; one core.

For each ranking: weighted sums of every alternative in every draw, rank of each, who beats whom, the mean of the weights with which each is
first, and the share of value draws in which it is first with them. Batched matrix products, comparisons and counts: no loop over draws or
alternatives. Written twice: plainly, draw by draw in memory as the matrices come, and laid out for speed, draws side by side and counts in bytes.
Exits with 1 when the numbers differ.
"""
import sys
import time

import numpy as np

RANKINGS, ALTERNATIVES, CRITERIA, VALUE_DRAWS, WEIGHT_DRAWS, ROUNDS = 60, 13, 8, 64, 9604, 5


def load(folder, name, *shape):
    return np.fromfile(f"{folder}/{name}.bin").reshape(shape)


def sums_of(values, weights, by_draw):
    """values: value draw x criterion x alternative; weights: draw x criterion; by_draw: the same, first the value draw that each meets."""
    whole = by_draw.shape[1]
    sums = np.matmul(by_draw, values).transpose(1, 0, 2).reshape(whole * VALUE_DRAWS, ALTERNATIVES)
    rest = WEIGHT_DRAWS - whole * VALUE_DRAWS
    return np.concatenate([sums, np.einsum("dc,dca->da", weights[-rest:], values[:rest])])


def confidence(values, central, often):
    with_central = np.einsum("dca,ic->dia", values, central)
    return (with_central.argmax(axis=2) == np.arange(ALTERNATIVES)).mean(axis=0) * (often > 0)


def counts(cells):
    return np.bincount(cells.ravel(), minlength=ALTERNATIVES * ALTERNATIVES).reshape(ALTERNATIVES, ALTERNATIVES) / WEIGHT_DRAWS


def plain(values, weights, by_draw):
    sums = sums_of(values, weights, by_draw)
    better = sums[:, :, None] > sums[:, None, :]
    wins = better.sum(axis=0)
    places = ALTERNATIVES - 1 - better.sum(axis=2)
    ranks = counts(places + np.arange(ALTERNATIVES) * ALTERNATIVES)
    first = np.equal(places, 0).astype(float)
    often = first.sum(axis=0)
    central = first.T @ weights / np.maximum(often, 1)[:, None]
    return ranks, wins / WEIGHT_DRAWS, central, confidence(values, central, often)


def laid_out(values, weights, by_draw):
    sums = np.ascontiguousarray(sums_of(values, weights, by_draw).T)
    better = (sums[:, None, :] > sums[None, :, :]).view(np.uint8)
    wins = np.add.reduce(better, axis=2, dtype=np.uint16)
    places = np.add.reduce(better, axis=0, dtype=np.uint8)
    ranks = counts(places + np.arange(ALTERNATIVES, dtype=np.uint8)[:, None] * np.uint8(ALTERNATIVES))
    first = np.equal(places, 0).astype(float)
    often = first.sum(axis=1)
    central = first @ weights / np.maximum(often, 1)[:, None]
    return ranks, wins / WEIGHT_DRAWS, central, confidence(values, central, often)


def differ(folder, results):
    names = [("shares", (ALTERNATIVES, ALTERNATIVES)), ("wins", (ALTERNATIVES, ALTERNATIVES)), ("central", (ALTERNATIVES, CRITERIA)), ("confidence", (ALTERNATIVES,))]
    worst = [np.abs(load(folder, name, RANKINGS, *shape) - np.array([r[i] for r in results])).max() for i, (name, shape) in enumerate(names)]
    return not max(worst) < 1e-9


def main(folder):
    values = load(folder, "values", RANKINGS, VALUE_DRAWS, ALTERNATIVES, CRITERIA)
    values = np.ascontiguousarray(values.transpose(0, 1, 3, 2))
    weights = load(folder, "weights", WEIGHT_DRAWS, CRITERIA)
    whole = WEIGHT_DRAWS // VALUE_DRAWS
    by_draw = np.ascontiguousarray(weights[: whole * VALUE_DRAWS].reshape(whole, VALUE_DRAWS, CRITERIA).transpose(1, 0, 2))
    ours = float(open(f"{folder}/toiletaid.txt").read())
    for name, rank in [("plain", plain), ("laid out for speed", laid_out)]:
        best = float("inf")
        for _ in range(ROUNDS):
            start = time.perf_counter()
            results = [rank(v, weights, by_draw) for v in values]
            best = min(best, (time.perf_counter() - start) * 1000 / RANKINGS)
        if differ(folder, results):
            print("The numbers differ.")
            return 1
        print(f"NumPy {np.__version__}, {name}: {best:.3f} ms a ranking, so toiletaid has {best / ours:.1f} times its throughput on one core")
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1]))
