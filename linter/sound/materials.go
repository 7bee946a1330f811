package sound

// Material is a published set of absorption coefficients.
type Material struct {
	Name       string
	Absorption Bands
	Source     string
}

// Materials is a small table of absorption coefficients. Books give them from 125 Hz
// to 4 kHz; 8 kHz is taken as 4 kHz.
func Materials() []Material {
	const (
		read   = "F. A. Everest, The Master Handbook of Acoustics, p. 163"
		memory = "tables common to handbooks, from memory"
	)
	return []Material{
		{"concrete, smooth", sixBands(0.01, 0.01, 0.015, 0.02, 0.02, 0.02), read},
		{"gypsum board on studs", sixBands(0.29, 0.10, 0.05, 0.04, 0.07, 0.09), read},
		{"acoustic ceiling tiles", sixBands(0.09, 0.28, 0.78, 0.84, 0.73, 0.64), read},
		{"brick, bare", sixBands(0.03, 0.03, 0.03, 0.04, 0.05, 0.07), memory},
		{"concrete block, coarse", sixBands(0.36, 0.44, 0.31, 0.29, 0.39, 0.25), memory},
		{"concrete block, painted", sixBands(0.10, 0.05, 0.06, 0.07, 0.09, 0.08), memory},
		{"plaster, smooth", sixBands(0.013, 0.015, 0.02, 0.03, 0.04, 0.05), memory},
		{"window glass", sixBands(0.35, 0.25, 0.18, 0.12, 0.07, 0.04), memory},
		{"heavy plate glass", sixBands(0.18, 0.06, 0.04, 0.03, 0.02, 0.02), memory},
		{"plywood panelling", sixBands(0.28, 0.22, 0.17, 0.09, 0.10, 0.11), memory},
		{"wooden floor", sixBands(0.15, 0.11, 0.10, 0.07, 0.06, 0.07), memory},
		{"linoleum on concrete", sixBands(0.02, 0.03, 0.03, 0.03, 0.03, 0.02), memory},
		{"heavy carpet on concrete", sixBands(0.02, 0.06, 0.14, 0.37, 0.60, 0.65), memory},
		{"heavy curtains", sixBands(0.14, 0.35, 0.55, 0.72, 0.70, 0.65), memory},
		{"opening", Flat(1), "by definition"},
	}
}

func sixBands(a, b, c, d, e, f float64) Bands { return Bands{a, b, c, d, e, f, f} }
