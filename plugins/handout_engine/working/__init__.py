"""What every technique is and hands over: its sheet of values, pieces, steps, cautions."""
