"""Repeatability studies against published ones: variance components, and the older way by ranges."""

from __future__ import annotations

import numpy as np
import pytest

from spoolwright.bench import gauge_study
from spoolwright.bench.crossed import table

# AIAG, Measurement Systems Analysis, 4th edition: ten parts, three people (A, B, C), three tries. Opened in
# public test files that quote it; the manual itself was not open to us.
TEN_PARTS = np.array(
    [
        [
            [0.29, -0.56, 1.34, 0.47, -0.80, 0.02, 0.59, -0.31, 2.26, -1.36],
            [0.41, -0.68, 1.17, 0.50, -0.92, -0.11, 0.75, -0.20, 1.99, -1.25],
            [0.64, -0.58, 1.27, 0.64, -0.84, -0.21, 0.66, -0.17, 2.01, -1.31],
        ],
        [
            [0.08, -0.47, 1.19, 0.01, -0.56, -0.20, 0.47, -0.63, 1.80, -1.68],
            [0.25, -1.22, 0.94, 1.03, -1.20, 0.22, 0.55, 0.08, 2.12, -1.62],
            [0.07, -0.68, 1.34, 0.20, -1.28, 0.06, 0.83, -0.34, 2.19, -1.50],
        ],
        [
            [0.04, -1.38, 0.88, 0.14, -1.46, -0.29, 0.02, -0.46, 1.77, -1.49],
            [-0.11, -1.13, 1.09, 0.20, -1.07, -0.67, 0.01, -0.56, 1.45, -1.77],
            [-0.15, -0.96, 0.67, 0.11, -1.45, -0.49, 0.21, -0.49, 1.87, -2.16],
        ],
    ]
).transpose(2, 0, 1)

# Montgomery, Introduction to Statistical Quality Control, the gauge study of twenty parts, three people, two
# tries. From memory; the printed sums of squares come out of them, which is why we trust them.
TWENTY_PARTS = np.array(
    [
        [21, 20, 20, 20, 19, 21], [24, 23, 24, 24, 23, 24], [20, 21, 19, 21, 20, 22],
        [27, 27, 28, 26, 27, 28], [19, 18, 19, 18, 18, 21], [23, 21, 24, 21, 23, 22],
        [22, 21, 22, 24, 22, 20], [19, 17, 18, 20, 19, 18], [24, 23, 25, 23, 24, 24],
        [25, 23, 26, 25, 24, 25], [21, 20, 20, 20, 21, 20], [18, 19, 17, 19, 18, 19],
        [23, 25, 25, 25, 25, 25], [24, 24, 23, 25, 24, 25], [29, 30, 30, 28, 31, 30],
        [26, 26, 25, 26, 25, 27], [20, 20, 19, 20, 20, 20], [19, 21, 19, 19, 21, 23],
        [25, 26, 25, 24, 25, 25], [19, 19, 18, 17, 19, 17],
    ],
    dtype=float,
).reshape(20, 3, 2)  # fmt: skip


def test_sums_of_squares_of_ten_parts() -> None:
    # AIAG MSA, 4th edition, table of the analysis of variance: 88.3619, 3.1673, 0.3590, 2.7589.
    # Opened as above.
    found = table(TEN_PARTS)
    assert found.parts.squares == pytest.approx(88.3619, abs=5e-5)
    assert found.persons.squares == pytest.approx(3.1673, abs=5e-5)
    assert found.interaction.squares == pytest.approx(0.3590, abs=5e-5)
    assert found.repeatability.squares - found.interaction.squares == pytest.approx(2.7589, abs=5e-5)
    # Its ratio of the interaction: 0.434 (from memory), far from standing out, so it is pooled there too.
    assert found.interaction.f == pytest.approx(0.434, abs=0.0005)
    assert found.pooled


def test_components_of_ten_parts() -> None:
    # AIAG MSA, 4th edition, table III-B 8, analysis of variance with the interaction pooled: repeatability
    # 0.199933, reproducibility 0.226838, parts 1.042327; 18.4, 20.9, 27.9 and 96.0 % of the whole; four
    # classes. Opened in public files that quote it. Both together it prints as 0.302373, but the root of the
    # sum of its own two squares is 0.302372: a slip in the sixth place, so the right value stands here.
    read = gauge_study.read(TEN_PARTS)
    found = [read.spreads[k].deviation for k in ("repeatability", "reproducibility", "gauge", "parts")]
    assert found == pytest.approx([0.199933, 0.226838, 0.302372, 1.042327], abs=5e-7)
    shares = [deviation / read.spreads["whole"].deviation for deviation in found]
    assert [100 * share for share in shares] == pytest.approx([18.4, 20.9, 27.9, 96.0], abs=0.05)
    assert read.classes == 4


def test_the_older_way_by_ranges_on_the_same_data() -> None:
    # AIAG MSA, 4th edition, average and range; opened in public test files: repeatability 0.2019,
    # reproducibility 0.2297, both 0.3058, parts 1.1046 (+-0.0001), classes 5.09 (+-0.01). Arithmetic on
    # the published numbers, no code of ours: it uses the analysis of variance; its intervals must hold them.
    k1, k2, k3 = 0.5908, 0.5231, 0.3146
    ranges = np.ptp(TEN_PARTS, axis=2).mean()
    repeated = ranges * k1
    apart = np.sqrt((np.ptp(TEN_PARTS.mean(axis=(0, 2))) * k2) ** 2 - repeated**2 / 30)
    both, parts = np.hypot(repeated, apart), np.ptp(TEN_PARTS.mean(axis=(1, 2))) * k3
    assert [repeated, apart, both, parts] == pytest.approx([0.2019, 0.2297, 0.3058, 1.1046], abs=1e-4)
    assert gauge_study.CLASSES * parts / both == pytest.approx(5.09, abs=0.01)
    read = gauge_study.read(TEN_PARTS)
    inside = {"repeatability": repeated, "reproducibility": apart, "gauge": both, "parts": parts}
    assert all(
        read.spreads[name].low < by_ranges < read.spreads[name].high for name, by_ranges in inside.items()
    )


def test_twenty_parts_in_a_textbook() -> None:
    # Montgomery, Introduction to Statistical Quality Control: sums of squares 1185.43, 2.62, 27.05, 59.50;
    # without the interaction 0.883 for repeatability, 0.0106 for people, 10.25 for parts. From memory.
    found = table(TWENTY_PARTS)
    assert found.parts.squares == pytest.approx(1185.43, abs=0.006)
    assert found.persons.squares == pytest.approx(2.62, abs=0.006)
    assert found.interaction.squares == pytest.approx(27.05, abs=0.006)
    assert found.repeatability.squares - found.interaction.squares == pytest.approx(59.50, abs=0.006)
    read = gauge_study.read(TWENTY_PARTS)
    variances = [read.spreads[k].deviation ** 2 for k in ("repeatability", "persons", "parts")]
    assert variances == pytest.approx([0.883, 0.0106, 10.25], abs=0.002)


def test_the_interval_of_repeatability_is_the_exact_one() -> None:
    # Any text on variance: SS/chi2(0.975) to SS/chi2(0.025); scipy.stats for the quantiles. Drawn, so to 1 %.
    from scipy import stats

    found = table(TWENTY_PARTS).repeatability
    low, high = np.sqrt(found.squares / stats.chi2.ppf([0.975, 0.025], found.freedom))
    spread = gauge_study.read(TWENTY_PARTS).spreads["repeatability"]
    assert (spread.low, spread.high) == pytest.approx((low, high), rel=0.01)


def test_one_way_of_it_is_scipys_own() -> None:
    # Source: scipy.stats.f_oneway on one person's tries, parts against repeatability.
    from scipy import stats

    alone = table(TEN_PARTS[:, :1, :])
    assert alone.parts.f == pytest.approx(stats.f_oneway(*TEN_PARTS[:, 0, :]).statistic)
    assert alone.parts.p == pytest.approx(stats.f_oneway(*TEN_PARTS[:, 0, :]).pvalue)
