"""What several families use: gathering, hems, seams, folds, strips, bindings, buttons.

Each stands with its steps (`NAME_steps`), pictures (`NAME_pictures`) and drawing
(`NAME_drawing`) beside it.
"""
