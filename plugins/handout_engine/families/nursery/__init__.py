"""Nursery: bibs, bonnets, burp cloths, shawls, pillows and covers.

- bib: A bib drawn from neck and chest, bound or turned, with a lapped closing at the back.
- bonnet: A baby's bonnet from one straight piece and a small back, a circle or a horseshoe.
- burp-cloth: A soft pad with a trim cloth on top, a pleat stitched down at its end as a band.
- nap-cover: A small quilt of square blocks with sashing and border, bound with a double binding.
- pillow-cover: A small pillow's cover with a lapped back: with a flange, with a ruffle, or plain.
- shawl-square: A square to wrap a baby in, hemmed all round with mitred corners, plain or edged.
"""
