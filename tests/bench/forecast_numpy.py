"""The model of forecast_bench.cpp drawn with NumPy: the median of 31 runs and the same figures, to compare by eye."""
import statistics
import time

import numpy as np

N = 100_000


def pert(rng, low, likely, high, size=N):
    if high <= low:
        return np.full(size, likely, dtype=float)
    span = high - low
    return low + span * rng.beta(1 + 4 * (likely - low) / span, 1 + 4 * (high - likely) / span, size)


SALES = np.array([6400, 7800, 9200, 9800, 11200, 11800, 12400, 12600, 14100, 15500], dtype=float)
WEIGHTS = np.array([.43, .46, .5, .56, .6, .64, .7, .77, .8, .85])
WEIGHTS /= WEIGHTS.sum()
SYMPTOMS = [
    [(.55, 20, 10, 1), (.27, 55, 2800, .8), (.18, 90, 1000, .7)],
    [(.9, 10, 250, 1), (.1, 90, 500, .7)],
]


def draw(seed):
    rng = np.random.Generator(np.random.Philox(seed))
    minutes = pert(rng, 95, 140, 235)
    parts = pert(rng, 0, 350, 900)
    repaired = np.ones(N, dtype=bool)
    for causes in SYMPTOMS:
        which = np.searchsorted(np.cumsum([c[0] for c in causes])[:-1], rng.random(N), side="right")
        time_factor = pert(rng, .6, 1, 2.2)
        cost_factor = pert(rng, .8, 1, 1.5)
        had = rng.random(N) < np.array([c[3] for c in causes])[which]
        minutes += np.array([c[1] for c in causes])[which] * time_factor
        parts += np.where(had, np.array([c[2] for c in causes])[which] * cost_factor, 0)
        repaired &= had
    working = np.maximum(0, SALES[rng.choice(len(SALES), N, p=WEIGHTS)] + 1567 * rng.standard_normal(N))
    dead = pert(rng, 1700, 3400, 5700)
    price = np.floor(np.where(repaired, working, dead) + .5)
    fees = np.floor(.128 * price + .5) + 30
    days = 6 + minutes / 69 + pert(rng, 3, 30, 120)
    returns = np.where(rng.random(N) < .05, 2 * 1100 + 350 + .25 * price + fees, 0)
    net = price - fees - 1100 - 350 - parts - .83 * minutes - returns
    profit = net - 4675
    per_hour = profit / ((175 + minutes) / 60)
    out = [np.quantile(v, [.1, .5, .9], method="median_unbiased") for v in (net, per_hour, minutes, parts, days, price)]
    return out[0], net.mean(), repaired.mean(), (profit < 0).mean()


times = []
for run in range(31):
    start = time.perf_counter()
    made = draw(run)
    times.append((time.perf_counter() - start) * 1000)
print(f"NumPy {np.__version__}, 100,000 draws: {statistics.median(times):.1f} ms")
print(f"net {made[0][0]:.0f}, {made[0][1]:.0f}, {made[0][2]:.0f}, mean {made[1]:.1f}; repaired {made[2]:.4f}; loss {made[3]:.4f}")
