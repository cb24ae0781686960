"""Garments: drafted to a baby's measures, by size or her own.

- baby-jacket: A jacket to the hip with its sleeves cut on, buttoned and faced in front, from
  flannel or pique.
- collar: A flat round collar, in one piece for a back opening or in two that meet, drafted to fit
  the neck of any garment of these pages.
- day-gown: A gown with a yoke, sleeves and a skirt to the feet or beyond, buttoned at the back.
- romper: A sleeveless romper cut in one, with a buttoned front band, leg bands, and a crotch that
  opens.
- slip: A sleeveless slip widening to the hem, for under a dress or a christening gown.
- summer-dress: A sleeveless dress to the knee, its skirt gathered or tucked to a yoke that buttons
  at the back.
"""
