package supply

// rateHours is the time over which a battery's capacity is stated: a capacity of
// 20 Ah is 1 A over 20 h. Faster than that it gives less.
const rateHours = 20

// Battery is what a standby battery is asked for. The standards it goes by write
// T1, I1, T2, I2 and D for the first five.
type Battery struct {
	StandbyHours, StandbyAmps           float64
	AnnouncementHours, AnnouncementAmps float64
	// Derating counts the announcement that much higher when it empties the
	// battery faster than in 20 h; 1 counts it as it is.
	Derating float64
	// Ageing is the factor for a battery at the end of its life.
	Ageing float64
}

// Capacity is the capacity a battery needs, and how it came about.
type Capacity struct {
	AmpHours float64
	// Derating is what the announcement was counted with: 1, or that of the
	// Battery.
	Derating float64
	// AtRate tells that 20 h × the announcement's current decides. A smaller
	// battery would be emptied faster than in 20 h and derated, and would then
	// not do; this one is not derated.
	AtRate bool
}

// Capacity gives the smallest capacity in Ah that does:
//
//	C = ageing·(T1·I1 + D·T2·I2), D = 1 if C/20 ≥ I2, else D = Derating
//
// BS 5839-1:2025 Annex E for valve-regulated lead-acid batteries, with an ageing
// of 1.25 and D = 1.75 or the maker's figure, as read in a trade guide; the 2002
// edition has T2 fixed at half an hour. NFPA 72 10.6.7 amounts to an ageing of
// 1.2 with D = 1. All figures are to be 0 or more, ageing and derating 1 or more.
//
// D depends on C and C on D. Read literally the rule has no answer where C with
// D = 1 is below 20·I2 and C with D = 1.75 is not: each D asks for the other. The
// smallest capacity for which the rule holds is then 20·I2 itself, which lies
// between the two.
func (b Battery) Capacity() Capacity {
	plain := b.with(1)
	rate := rateHours * b.AnnouncementAmps
	if plain >= rate || b.Derating <= 1 {
		return Capacity{AmpHours: plain, Derating: 1}
	}
	derated := b.with(b.Derating)
	if derated > rate {
		return Capacity{AmpHours: rate, Derating: 1, AtRate: true}
	}
	return Capacity{AmpHours: derated, Derating: b.Derating}
}

// Bare is what is drawn, in Ah, without a factor: what a new battery would have
// to give if it gave its capacity at any rate.
func (b Battery) Bare() float64 {
	b.Ageing = 1
	return b.with(1)
}

func (b Battery) with(derating float64) float64 {
	return b.Ageing * (b.StandbyHours*b.StandbyAmps + derating*b.AnnouncementHours*b.AnnouncementAmps)
}
