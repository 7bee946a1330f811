package sound

import "math"

// ExposureHours is how long somebody may stay at a level each day: 8 h at 85 dBA,
// half of it with every 3 dB more (NIOSH publication 98-126, 1998, table 1-1; from
// memory). Other rules begin at other levels: local codes come first.
func ExposureHours(levelDBA float64) float64 { return 8 * math.Pow(2, (85-levelDBA)/3) }
