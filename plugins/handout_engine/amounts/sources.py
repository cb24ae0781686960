"""Every source the handouts cite, once each, by key; and what a number can rest on."""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum


@dataclass(frozen=True)
class Source:
    """A published source: who, what, where in it, and how sure we are of the quotation."""

    key: str
    author: str
    title: str
    detail: str

    @property
    def line(self) -> str:
        """The source as a page prints it."""
        return f"{self.author}: {self.title}. {self.detail}"


class Ground(Enum):
    """The kinds of ground a value can stand on."""

    GIVEN = "given on this page"
    USUAL = "the usual choice, unless another is made"
    GEOMETRY = "geometry: follows from folding and joining cloth"
    PUBLISHED = "published"
    PRACTICE = "common practice, no source"
    LAYOUT = "measured on the layout of the pieces on the cloth"
    DRAWN = "measured on the outline as it is drawn"
    ESTIMATE = "an estimate from the proportions of other measures; no figure for babies was found"


@dataclass(frozen=True)
class Basis:
    """What a value rests on; `source` is set for published figures only."""

    ground: Ground
    source: Source | None = None

    @property
    def text(self) -> str:
        """The basis in words, with the author of the source where there is one."""
        if self.source is None:
            return self.ground.value
        return f"{self.ground.value}: {self.source.author}, {self.source.title}"


GIVEN = Basis(Ground.GIVEN)
USUAL = Basis(Ground.USUAL)
GEOMETRY = Basis(Ground.GEOMETRY)
PRACTICE = Basis(Ground.PRACTICE)
LAYOUT = Basis(Ground.LAYOUT)
DRAWN = Basis(Ground.DRAWN)
ESTIMATE = Basis(Ground.ESTIMATE)


def published(key: str) -> Basis:
    """The basis of a figure that stands in the source of that key."""
    return Basis(Ground.PUBLISHED, SOURCES[key])


_ALL = (
    Source(
        "yard",
        "National Bureau of Standards",
        "Addendum to Circular 572 (1960)",
        "The yard is 0.9144 m, so the inch is 25.4 mm exactly.",
    ),
    Source(
        "iso-128",
        "International Organization for Standardization",
        "ISO 128, Technical product documentation: general principles of representation",
        "Line kinds of the drawings (from memory of the standard).",
    ),
    Source(
        "utah-ruffle",
        "Utah State University Extension",
        "Clothing construction: Straight ruffle",
        "Two to three times the edge in light cloth; two gathering rows 1/4 in apart.",
    ),
    Source(
        "butterick-1921",
        "Butterick Publishing Company",
        "The New Dressmaker (1921)",
        "Ruchings and quillings, p. 137 and 142; a doubled ruffle with heading is cut twice its "
        "finished width plus twice the heading. Bias bands: cut twice their finished width plus "
        "3/8 in turning on each edge, piping strips 1 1/4 in, p. 131; joined on the thread, p. 15.",
    ),
    Source(
        "baldt-1916",
        "Laura I. Baldt",
        "Clothing for Women (1916)",
        "A tuck takes twice its depth, so all tucks together twice the depth times their number. "
        "Smocking: four times the finished width, dots 1/8 to 3/8 in and rows 3/8 to 3/4 in apart.",
    ),
    Source(
        "home-school-sewing",
        "Home and School Sewing",
        "Chapter XXI, Tucks (about 1901)",
        "Touching tucks take three times their depth of flat cloth each; the space between tucks "
        "is half of their depth, for wide tucks a third to a half, for very narrow ones as wide "
        "as they are deep; odd numbers of tucks; depths of 1/16 in to about 2 in.",
    ),
    Source(
        "iso-5077",
        "International Organization for Standardization",
        "ISO 5077, Textiles: determination of dimensional change in washing and drying",
        "Change in per cent of the length before washing (the formula from memory).",
    ),
    Source(
        "cfr-1615",
        "United States, Code of Federal Regulations",
        "16 CFR 1615 and 1616, flammability of children's sleepwear",
        "Read in a copy; check the current text. In tight-fitting sleepwear no trim may stand out "
        "more than 6 mm, so a ruffle disqualifies it.",
    ),
    Source(
        "cfr-1610",
        "United States, Code of Federal Regulations",
        "16 CFR 1610, flammability of clothing textiles",
        "Read in a copy; check the current text. Plain cloth of 88.2 g/m2 (2.6 oz/sq yd) or more "
        "is exempt from testing; batiste and lawn are often lighter.",
    ),
    Source(
        "button-lines",
        "Trade unit of the button trade",
        "Button sizes in lines",
        "One line is 1/40 in (0.635 mm): 16 lines are 10.16 mm, 24 are 15.24 mm, 40 are 1 in.",
    ),
    Source(
        "bias-yield",
        "Printed table of no known origin",
        "Bias strips from one yard of cloth",
        "Yards of strip by its width, from cloth 45 in and 35 in wide; arithmetic checked: it lies "
        "14 to 25 % below gross area.",
    ),
    Source(
        "binding-examples",
        "Worked examples of no known origin",
        "Bindings of 54 × 60 in and 40 × 50 in",
        "Perimeter and tail 238 in in 6 strips of 42 in; 180 in in 5 strips of 40 in; arithmetic "
        "checked.",
    ),
    Source(
        "cfr-1501",
        "United States, Code of Federal Regulations",
        "16 CFR 1501, small parts in articles for children under three",
        "Read in a copy; check the current text. A part that fits a cylinder 31.7 mm wide and 25.4 "
        "to 57.1 mm deep is small. Clothing and its buttons are exempt: advice, not law, here.",
    ),
    Source(
        "en-14682",
        "European Committee for Standardization",
        "EN 14682:2014, Safety of children's clothing: cords and drawstrings",
        "No cords at the head or neck for children up to 7 years or 134 cm (from memory of the "
        "standard).",
    ),
    Source(
        "cfr-1120",
        "United States, Code of Federal Regulations",
        "16 CFR 1120.3, drawstrings on children's upper outerwear (after ASTM F1816)",
        "Read in a copy; check the current text. None at hood or neck in sizes 2T to 12; at waist "
        "and hem at most 75 mm (which it rounds to 3 in) outside the channel.",
    ),
    Source(
        "cfr-1241",
        "United States, Code of Federal Regulations",
        "16 CFR 1241.2, crib mattresses",
        "Read in a copy; check the current text. The mattress of a full-size crib measures at "
        "least 27 1/4 by 51 5/8 in (690 by 1310 mm).",
    ),
    Source(
        "extension-576",
        "Extension Bulletin 576",
        "Buttons and Buttonholes (1965)",
        "A buttonhole is the button's diameter and its thickness long, 1/8 in more in bulky cloth; "
        "a crosswise one begins 1/8 in beyond the centre line. The overlap is at least half the "
        "button and 1/4 in (partly unreadable in the copy).",
    ),
    Source(
        "tanzania-2022",
        "Tanzania Institute of Education",
        "Textile and Garment, Student's Book Form Three (2022)",
        "The buttonhole of a flat button is its diameter and 3 mm, p. 63.",
    ),
    Source(
        "icar-garment",
        "Indian Council of Agricultural Research",
        "E-course, garment construction",
        "Set the first and the last button and divide between them equally; on shirts 3 to "
        "3 1/2 in apart; at least half a button from the edge.",
    ),
    Source(
        "oregon-l87",
        "Oregon State College Extension, 4-H",
        "L-87, It's Fun to Sew a Cotton School Dress",
        "P. 15: narrow hem 1/4 + 1/4 in; moderate flare 2 to 3 in, sheer straight up to 4, flared "
        "1 1/2, circle 1/4 or rolled; 1/4 in turned under.",
    ),
    Source(
        "iso-1144",
        "International Organization for Standardization",
        "ISO 1144 and ISO 2947, Textiles: universal system for designating linear density (tex)",
        "Tex is the weight in grams of 1,000 m; denier is 9 tex; tex × Ne is 590.54 and tex × Nm "
        "is 1,000. Rounded tex stay within about 2 %.",
    ),
    Source(
        "snyder-1977",
        "Snyder and others",
        "Anthropometry of Infants, Children, and Youths for Product Safety Design (1977)",
        "UM-HSRI-77-17 by Snyder, Schneider, Owings, Reynolds, Golomb and Schork; tables at NIST. "
        "Means of children measured in the United States, 27 to 45 infants in each age band, "
        "smoothed here over body length; size 50 lies below the measured infants.",
    ),
    Source(
        "cdc-2000",
        "United States, Centers for Disease Control and Prevention",
        "CDC Growth Charts (2000), Vital and Health Statistics series 11 no. 246",
        "Head and weight at the age at which the median length is the size, boys and girls "
        "averaged; ages are a guide only.",
    ),
    Source(
        "en-13402",
        "European Committee for Standardization",
        "EN 13402, Size designation of clothes",
        "A baby's size is the body length in cm, in steps of 6 cm (from memory of the standard).",
    ),
    Source(
        "iso-4915",
        "International Organization for Standardization",
        "ISO 4915 (as ASTM D6193), Textiles: stitch types, classification and terminology",
        "Classes 100 chain stitches, 200 hand stitches, 300 lockstitches, 400 multi-thread chain "
        "stitches, 500 overedge stitches, 600 covering stitches (from memory of the standard).",
    ),
    Source(
        "needle-systems",
        "Trade systems",
        "Numbers of machine needles",
        "The metric number is the blade's diameter in hundredths of a millimetre; pairs 60/8 to "
        "120/19 stand on the packages; for old numbers below 19 the metric one is "
        "(number - 8) × 5 + 60. A twin needle is named by spacing and number, 2.0/80.",
    ),
)

SOURCES: dict[str, Source] = {source.key: source for source in _ALL}
