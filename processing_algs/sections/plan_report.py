"""The report of planned holes."""

import numpy as np

from ..gis.i18n import tr
from ..gis.report import Report


def write_report(path, held, said):
    """Write the table of planned holes.

    Parameters
    ----------
    path : str
    held : list of dict
        Holes, as the algorithm plans them.
    said : Said
    """
    report = Report(tr("Planned boreholes"))
    report.paragraph(
        tr(
            "Straight holes, planned and not drilled. Azimuths from true north, inclinations below the horizon, "
            "lengths in metres along the hole. The 1-sigma of the depth at which a hole meets its plane, and of the "
            "place on the plane, hold for the errors that were stated: the plane's, and {sigma} degrees of the "
            "hole's direction."
        ).format(sigma=f"{said.HOLE_SIGMA:g}")
    )
    report.table(
        [
            tr("hole"), tr("azimuth"), tr("inclination"), tr("length, m"), tr("angle to the plane"),
            tr("depth, 1-sigma, m"), tr("place, 1-sigma, m"), tr("collar, m"), tr("target, m"),
        ],
        [
            (
                one["name"],
                tr("vertical") if np.isnan(one["azimuth"]) else f"{one['azimuth']:05.1f}",
                *(round(float(one[key]), 1) for key in ("down", "length", "angle", "sigma_length", "sigma_aside",
                                                        "collar_elev", "target_elev")),
            )
            for one in held
        ],
    )  # fmt: skip
    report.paragraph(
        tr(
            "A plan is no permit and no safety case. Before drilling, services, old workings, gas, water, the "
            "stability of the ground and rights of way are to be looked into on the spot. No hole stays straight: "
            "survey it."
        )
    )
    report.cautions()
    report.write(path)
