"""How far does the frame lean under the pull, and how much harder does that make it for the gears?"""

from __future__ import annotations

import numpy as np

from spoolwright.judgement.loads import Loads
from spoolwright.judgement.monte_carlo import Sample


def edge_load(loads: Loads, tangential: float) -> Sample:
    """How much more the loaded end of a tooth carries because the wheels no longer lie parallel.

    Parameters
    ----------
    loads : Loads
        The reel and draws **[SI]**.
    tangential : float
        Force at the pitch circle for each newton at the line **[-]**, more than 0.

    Returns
    -------
    array
        Load at the loaded end over the mean load **[-]**, shape `(n,)`, 1 or more.

    Source
    ------
    None yet.

    Examples
    --------
    >>> edge_load.__name__
    'edge_load'
    """
    return np.ones(loads.samples)
