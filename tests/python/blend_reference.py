"""A belief and trial bends by another way than the library's: the scatter integrated by Gauss and Legendre in panels, the
line at each scatter by conditioning the normal distribution of belief and readings together. NumPy and SciPy."""

import numpy as np
from scipy import optimize, special, stats

# Panels of the logarithm of the scatter over the believed one, each with so many points of Gauss and Legendre.
ENDS, PANELS, POINTS = (-12.0, 30.0), 2_100, 6


def points():
    at, weight = np.polynomial.legendre.leggauss(POINTS)
    edges = np.linspace(*ENDS, PANELS + 1)
    half = (edges[1] - edges[0]) / 2
    middle = (edges[:-1] + edges[1:]) / 2
    return (middle[:, None] + half * at).ravel(), np.tile(half * weight, PANELS)


class Blend:
    """Nodes of the mixture: weights that add up to one, scatter of a bend and of a reading, means and covariances."""

    def __init__(self, sets, gots, prior, step, rounding, one_sided):
        a0, sa, b0, sb, scatter, worth, correlation = prior
        u, weight = points()
        self.sets = list(sets)
        self.scatter = scatter * np.exp(u)
        self.square = self.scatter**2 + rounding**2
        self.half = np.array([one_sided(step, s**0.5) for s in self.square])
        center = np.array([a0, b0])
        before = np.array([[sa**2, correlation * sa * sb], [correlation * sa * sb, sb**2]])
        # worth scatter^2 / square is a chi-square number; its density in u has one more power of it.
        chi = worth * np.exp(-2 * u)
        likely = stats.chi2.logpdf(chi, worth) + np.log(chi)
        design = self.design(sets)
        off = np.array(sets) - np.array(gots) - design @ center
        means, self.covariance, likely = self.conditioned(design, before[None], off, likely)
        self.mean = center + means
        self.weigh(likely, weight)

    @staticmethod
    def design(sets):
        return np.column_stack([np.ones(len(sets)), np.array(sets, dtype=float)])

    def conditioned(self, design, covariance, off, likely):
        """What readings off by so much leave of a normal line: its mean, its covariance, how likely they are."""
        n = len(design)
        whole = design @ covariance @ design.T + self.square[:, None, None] * np.eye(n)
        gain = covariance @ design.T @ np.linalg.inv(whole)
        after = covariance - gain @ design @ covariance
        _, size = np.linalg.slogdet(whole)
        far = off @ np.linalg.solve(whole, np.broadcast_to(off[:, None], (len(whole), n, 1)))[..., 0].T if n else 0.0
        return gain @ off, after, likely - size / 2 - far / 2

    def weigh(self, likely, weight):
        kept = likely > likely.max() - 40
        for name in ("scatter", "square", "half", "mean", "covariance"):
            setattr(self, name, getattr(self, name)[kept])
        self.weight = np.exp(likely[kept] - likely.max()) * weight[kept]
        self.weight /= self.weight.sum()

    def with_more(self, sets):
        """More bends, if line and scatter of a reading stay as they are."""
        more = object.__new__(Blend)
        more.__dict__ |= self.__dict__
        more.sets = [*self.sets, *sets]
        if sets:
            design = self.design(sets)
            whole = design @ self.covariance @ design.T + self.square[:, None, None] * np.eye(len(sets))
            more.covariance = self.covariance - self.covariance @ design.T @ np.linalg.inv(whole) @ design @ self.covariance
            one = 1 / (self.weight @ (1 / self.square))
            likely = -np.linalg.slogdet(whole)[1] / 2 - len(sets) * one / self.square / 2
            more.weigh(likely, self.weight)
        return more

    def summary(self):
        """Means of both parts, their covariance over everything, scatter of a bend."""
        beta = self.weight @ self.mean
        apart = self.mean - beta
        whole = np.einsum("i,ijk->jk", self.weight, self.covariance + apart[:, :, None] * apart[:, None, :])
        return beta, whole, (self.weight @ (1 / self.scatter**2)) ** -0.5

    def taken(self, v, prior):
        """Share of the belief's variance of v times the line that is gone, on average."""
        _, sa, _, sb, *_, correlation = prior
        before = v @ np.array([[sa**2, correlation * sa * sb], [correlation * sa * sb, sb**2]]) @ v
        return self.weight @ (1 - self.error(v) ** 2 / before)

    def bias(self, v):
        """How far v times the line is off if every reading is rounded to its worst side."""
        if not self.half.any():
            return 0.0
        moves = sum(abs(self.covariance @ np.array([1.0, s]) @ v) for s in self.sets)
        return self.half * moves / self.square

    def error(self, v):
        return np.sqrt(np.einsum("j,ijk,k->i", v, self.covariance, v))

    def both_ends(self, near, chance, value):
        """Where `value(x)`, a vector of the line's parts and a number it is to stay below, leaves each tail outside."""
        ends = []
        for side, tail in ((-1, (1 - chance) / 2), (1, (1 + chance) / 2)):

            def below(x):
                v, most = value(x)
                far = (most - self.mean @ v - side * self.bias(v)) / self.error(v)
                return self.weight @ special.ndtr(far) - tail

            reach = 1e-3
            while below(near + side * reach) * side < 0 and reach < 1e5:
                reach *= 1.5
            if reach >= 1e5:
                return None
            ends.append(optimize.brentq(below, *sorted((near, near + side * reach)), xtol=1e-13, rtol=1e-14))
        return ends

    def constant(self, chance):
        return self.both_ends(self.summary()[0][0], chance, lambda x: (np.array([1.0, 0.0]), x))

    def slope(self, chance):
        return self.both_ends(self.summary()[0][1], chance, lambda x: (np.array([0.0, 1.0]), x))

    def setting(self, beta, wanted, chance):
        return self.both_ends((wanted + beta[0]) / (1 - beta[1]), chance, lambda x: (np.array([1.0, x]), x - wanted))

    def next_half(self, x, chance):
        v = np.array([1.0, x])
        middle, bias = self.mean @ v - self.summary()[0] @ v, self.bias(v)
        error = np.sqrt(self.error(v) ** 2 + self.square)

        def outside(half):
            inside = special.ndtr((half - bias - middle) / error) - special.ndtr((bias - half - middle) / error)
            return self.weight @ np.maximum(inside, 0) - chance

        return optimize.brentq(outside, 0, 1e9, xtol=1e-13, rtol=1e-14, maxiter=300)


def agreement(sets, gots, prior, step, rounding, one_sided):
    """How often a belief, where it is right, makes trials whose own mean and slope lie so far from it: the tail of chi-square,
    averaged over the scatters that belief and residuals leave."""
    a0, sa, b0, sb, scatter, worth, correlation = prior
    x, off = np.array(sets), np.array(sets) - np.array(gots) - a0 - b0 * np.array(sets)
    design = np.ones((len(x), 1)) if np.ptp(x) < 10 else Blend.design(sets)
    lever = np.array([[1.0, x.mean()]]) if np.ptp(x) < 10 else np.eye(2)
    own, *_ = np.linalg.lstsq(design, off, rcond=None)
    residual = float(np.sum((off - design @ own) ** 2))
    u, weight = points()
    square = (scatter * np.exp(u)) ** 2 + rounding**2
    chi = worth * np.exp(-2 * u)
    likely = stats.chi2.logpdf(chi, worth) + np.log(chi) - (len(x) - len(own)) / 2 * np.log(square) - residual / square / 2
    weight = np.exp(likely - likely.max()) * weight
    belief = lever @ np.array([[sa**2, correlation * sa * sb], [correlation * sa * sb, sb**2]]) @ lever.T
    inverse = np.linalg.inv(design.T @ design)
    tails = []
    for variance in square:
        precision = np.linalg.inv(belief + variance * inverse)
        # Mean and slope may be off by what moves every reading to its worst side: what brings them nearest.
        half = one_sided(step, variance**0.5)
        away = x - x.mean()
        far = np.array([half, half * abs(away).sum() / (away @ away)]) if len(own) == 2 else np.array([half])
        # In terms of the mean: a line's value there, and its slope.
        to = np.array([[1.0, x.mean()], [0.0, 1.0]]) if len(own) == 2 else np.eye(1)
        form = np.linalg.inv(to).T @ precision @ np.linalg.inv(to)
        root = np.linalg.cholesky(form).T
        found = optimize.lsq_linear(root, root @ to @ own, (-far - 1e-300, far + 1e-300)) if half else None
        left = root @ to @ own - (root @ found.x if half else 0)
        tails.append(stats.chi2.sf(left @ left, len(own)))
    return float(weight @ np.array(tails) / weight.sum())
