package transfer

import (
	"slices"
	"strconv"
	"strings"

	"loudlint/schema"
)

// fold puts neighbours that are equal but for their number into runs: "D 1" to
// "D 18" with the same tap, model, space and cable, equally far apart. What is
// inside them is folded first, and has to be the same too. It calls itself for
// what is inside; its nesting is bounded where devices are placed.
func fold(devices []*device) []*device {
	for _, d := range devices {
		d.inside = fold(d.inside)
	}
	var all []*device
	for _, d := range devices {
		if n := len(all); n > 0 && all[n-1].takes(d) {
			continue
		}
		all = append(all, d)
	}
	return all
}

// takes adds a device to the run that another one is or begins, where it fits.
func (d *device) takes(next *device) bool {
	if next.quantity > 0 && next.base == "" || d.quantity > 0 && d.base == "" {
		return false // a run already, as the table says
	}
	base, n, ok := numbered(next.name)
	if !ok || next.quantity > 0 || d.kind != next.kind || d.kind == kindExisting || d.kind == kindLineEnd || len(next.notes) > 0 {
		return false
	}
	first, last := d.first, d.first+d.quantity-1
	if d.quantity == 0 {
		b, k, ok := numbered(d.name)
		if !ok || b != base || k < 1 {
			return false
		}
		first, last = k, k
	} else if d.base != base {
		return false
	}
	if n != last+1 || !d.equals(next) {
		return false
	}
	if d.quantity > 1 && !sameLength(d.spacing, next.leg) {
		return false
	}
	if !sameInside(d, schema.NumberedName(base, first), next, next.name) {
		return false
	}
	if d.quantity == 0 {
		d.quantity, d.first, d.base, d.spacing = 1, first, base, next.leg
	}
	d.quantity++
	return true
}

// equals tells that two devices are the same but for name and leg.
func (d *device) equals(o *device) bool {
	return d.model == o.model && d.tap == o.tap && d.tapFor == o.tapFor && d.impedance == o.impedance && d.load == o.load &&
		d.space == o.space && d.height == o.height && d.polarity == o.polarity && d.basis == o.basis && d.cable == o.cable
}

func sameLength(a, b string) bool {
	x, known := metres(a)
	y, also := metres(b)
	if known != also {
		return false
	}
	return a == b || known && x >= y && x <= y
}

// sameInside tells that two devices enclose the same, names without what they
// begin with because of the devices around them.
func sameInside(a *device, nameA string, b *device, nameB string) bool {
	return slices.EqualFunc(a.inside, b.inside, func(x, y *device) bool {
		if x.kind != y.kind || !x.equals(y) || !sameLength(x.leg, y.leg) || !sameLength(x.spacing, y.spacing) ||
			x.quantity != y.quantity || x.first != y.first || len(y.notes) > 0 {
			return false
		}
		insideA, okA := strings.CutPrefix(x.called(), nameA+", ")
		insideB, okB := strings.CutPrefix(y.called(), nameB+", ")
		return okA && okB && insideA == insideB && sameInside(x, nameA, y, nameB)
	})
}

// called is the name of a device, or that of its run.
func (d *device) called() string {
	if d.quantity > 0 && d.base != "" {
		return d.base
	}
	return d.name
}

// numbered splits a made name: "D 12" into "D" and 12.
func numbered(name string) (base string, n int, ok bool) {
	at := strings.LastIndexByte(name, ' ')
	if at <= 0 {
		return "", 0, false
	}
	n, err := strconv.Atoi(name[at+1:])
	if err != nil || n < 0 || schema.NumberedName(name[:at], n) != name {
		return "", 0, false
	}
	return name[:at], n, true
}
