"""The cloth that is bought: its width and shrinkage, pieces laid on it, strips on its bias."""
