"""What a sheet says about its norths, in words."""

from ..core.north_diagram import CHANGE, ring_check, ring_turn
from ..core.notation_write import three_digits
from ..gis.i18n import day, tr


def side(angle, decimals=1):
    """Write an angle with its side, such as 12.3° E; 0 has none."""
    size = f"{abs(angle):.{decimals}f}"
    if float(size) == 0.0:
        return f"{size}°"
    return f"{size}° {tr('E') if angle > 0 else tr('W')}"


def norths_sentences(norths, date, model, drawn=None):
    """Say how the norths of a sheet lie, how far that holds and how to set a compass.

    Parameters
    ----------
    norths : core.north_diagram.Norths
    date : datetime.date
    model : str
        Name of the model of the field.
    drawn : core.north_diagram.Drawn, optional
        Angles of a diagram beside the words.

    Returns
    -------
    list of str
        Sentences, each a line of its own.
    """
    said = [
        tr(
            "Magnetic north is {decl} of true north at the centre of the sheet on {day} ({model}, 1-sigma "
            "{sigma:.1f}°), moving {yearly} a year."
        ).format(
            decl=side(norths.decl.centre),
            day=day(date),
            model=model,
            sigma=norths.sigma,
            yearly=side(norths.yearly, 2),
        ),
        tr("Grid north is {converg} of true north; magnetic north is {grid_mag} of grid north.").format(
            converg=side(norths.converg.centre), grid_mag=side(norths.grid_mag.centre)
        ),
        *_ranges(norths),
        *_drawing(drawn),
        *_field(norths),
    ]
    if not norths.no_compass:
        said += [_ring(norths.decl.centre), _holds(norths, model)]
    return said


def _ranges(norths):
    """Say what varies over the sheet."""
    named = (
        (norths.decl, tr("declination")),
        (norths.converg, tr("convergence")),
        (norths.grid_mag, tr("magnetic from grid north")),
    )
    parts = [
        tr("{what} {low} to {high}").format(what=what, low=side(span.low), high=side(span.high))
        for span, what in named
        if span.varies
    ]
    return [tr("Over the sheet: {parts}.").format(parts=", ".join(parts))] if parts else []


def _drawing(drawn):
    if drawn is None:
        return []
    if drawn.to_scale:
        return [tr("The angles of the diagram are to scale.")]
    return [tr("The angles of the diagram are exaggerated: use the numbers.")]


def _field(norths):
    if norths.no_compass:
        return [tr("The horizontal field is too weak for a compass on this sheet (blackout zone).")]
    if norths.caution:
        return [tr("The horizontal field is weak on this sheet: use a compass with caution.")]
    return []


def _ring(decl):
    turn = ring_turn(decl)
    if turn == "none":
        return tr("The ring of a compass stays at zero.")
    way = {
        "clockwise": tr(
            "To read true azimuths turn the ring of the compass clockwise by {angle:.1f}°; sighting along the needle "
            "it must then read {check}."
        ),
        "counter_clockwise": tr(
            "To read true azimuths turn the ring of the compass counter-clockwise by {angle:.1f}°; sighting along the "
            "needle it must then read {check}."
        ),
    }[turn]
    return way.format(angle=abs(decl), check=three_digits(ring_check(decl), 1))


def _holds(norths, model):
    if norths.valid_until is None:
        return tr("The declination changes by {change:g}° not before the end of {model}, {end:.0f}.").format(
            change=CHANGE, model=model, end=norths.model_end
        )
    return tr("By {day} the declination will have changed by {change:g}°: these angles hold until then.").format(
        day=day(norths.valid_until), change=CHANGE
    )


def conversion_words(way):
    """Say what to do with an azimuth.

    Parameters
    ----------
    way : core.north_diagram.Conversion

    Returns
    -------
    str
        Such as "Magnetic to grid: subtract 9.5°".
    """
    names = {"magnetic": tr("magnetic"), "true": tr("true"), "grid": tr("grid")}
    form = tr("{start} to {end}: add {angle:.1f}°") if way.add >= 0 else tr("{start} to {end}: subtract {angle:.1f}°")
    return form.format(start=names[way.start].capitalize(), end=names[way.end], angle=abs(way.add))
