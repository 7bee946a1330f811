package transfer

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"loudlint/schema"
	"loudlint/schema/quantity"
)

// Kinds of device, as blocks are called.
const (
	kindLoudspeaker = "loudspeaker"
	kindAttenuator  = "attenuator"
	kindBranch      = "branch"
	kindExisting    = "existing"
	kindLineEnd     = "line_end"

	// Rows that are cable only.
	kindHomeRun   = "home run"
	kindRingLeg   = "ring leg"
	kindWholeLine = "whole line"
)

// kinds is what people call devices.
var kinds = map[string]string{
	"": kindLoudspeaker, "loudspeaker": kindLoudspeaker, "speaker": kindLoudspeaker,
	"attenuator": kindAttenuator, "volume control": kindAttenuator,
	"branch": kindBranch, "tee": kindBranch,
	"existing": kindExisting, "line end": kindLineEnd,
	"home run": kindHomeRun, "ring leg": kindRingLeg, "whole line": kindWholeLine,
}

// table is one line as its rows say.
type table struct {
	name              string
	amplifier, output string
	homeRun, cable    string // of rows that are only cable
	ringLeg, length   string
	reverse           bool
	devices           []*device
	taken             map[string]int
	comments          []string
}

// device is one device of a line, or a run of equal ones.
type device struct {
	kind   string
	name   string // as in the table: "Room 4, Bed"
	within *device
	inside []*device

	model, tap, tapFor, impedance, load, space, height, polarity, basis string
	leg, cable, spacing                                                 string
	notes                                                               []string
	quantity, first                                                     int // of a run; 0 for none
	base                                                                string
}

// loudspeakers reads a table of loudspeakers.
func (c *converter) loudspeakers(h *headed) {
	var last *table
	for _, r := range c.rows(h) {
		line, col := r.at(keyLine)
		if line == "" && last == nil {
			if line = h.sheet.Name; line == "" {
				line = "Line 1"
			}
			if has(h.columns, keyLine) {
				r.refuse(nil, "No line is named.", fmt.Sprintf("It is taken to be on line %q.", line))
			}
		}
		if line != "" { // an empty cell stands for the one above, as in merged cells
			last = c.line(r.name(line, col))
		}
		r.formulas()
		last.add(r)
	}
}

// line gives the line of a name.
func (c *converter) line(name string) *table {
	t := c.lines[name]
	if t == nil {
		t = &table{name: name, taken: map[string]int{}}
		c.lines[name] = t
		c.order = append(c.order, t)
	}
	return t
}

// add makes a device of a row.
func (t *table) add(r *row) {
	t.fed(r)
	kindText, kindCol := r.at(keyDevice)
	kind, known := kinds[plain(kindText)]
	if !known {
		kind = kindLoudspeaker
		r.refuse(kindCol, fmt.Sprintf("%q is no kind of device.", kindText), "It is taken for a loudspeaker; known are loudspeaker, attenuator, branch, existing, line end, and for cable alone home run, ring leg and whole line.")
	}
	d := &device{kind: kind, leg: amount(r, keyLeg, quantity.Lengths), cable: r.stated(keyCable)}
	switch kind {
	case kindHomeRun, kindRingLeg, kindWholeLine:
		t.laid(r, kind, d)
		return
	}
	name, nameCol := r.at(keyDesignation)
	if name == "" && !r.says() {
		r.rest() // a remark between rows
		n := Notice{Sheet: r.of.sheet.Name, Row: r.number, Found: "This row says nothing of a device.", Expected: "It is kept as a comment."}
		r.c.notice(n)
		t.comments = append(append(t.comments, n.String()), r.all()...)
		return
	}
	r.c.result.Devices++
	d.name = t.unique(r, r.name(name, nameCol), nameCol)
	d.spacing = amount(r, keySpacing, quantity.Lengths)
	d.model, d.space = r.stated(keyModel), r.stated(keySpace)
	d.quantity = r.count()
	t.place(r, d)
	switch kind {
	case kindLoudspeaker:
		d.tap, d.tapFor = amount(r, keyTap, quantity.Powers), amount(r, keyTapFor, quantity.Voltages)
		d.impedance = r.impedance()
		d.height = amount(r, keyHeight, quantity.Lengths)
	case kindLineEnd:
		d.load = amount(r, keyTap, quantity.Powers)
	case kindExisting:
		d.load = amount(r, keyTap, quantity.Powers)
		d.impedance = amount(r, keyImpedance, quantity.Resistances)
	}
	d.remark(r)
	r.rest()
	d.notes = append(d.notes, r.notes...)
}

// laid reads a row that is cable only.
func (t *table) laid(r *row, kind string, d *device) {
	remark, _ := r.at(keyRemarks)
	switch kind {
	case kindHomeRun:
		t.homeRun, t.cable = d.leg, d.cable
	case kindWholeLine:
		t.length, t.cable = d.leg, d.cable
	case kindRingLeg:
		t.ringLeg = d.leg
		if t.reverse = remark == "reverse return"; t.reverse {
			remark = ""
		}
	}
	if remark != "" {
		r.notes = append(r.notes, remark)
	}
	r.rest()
	t.comments = append(t.comments, r.notes...)
}

// fed notes what feeds the line; the first row that says so counts.
func (t *table) fed(r *row) {
	for _, what := range []struct {
		key key
		at  *string
	}{{keyAmplifier, &t.amplifier}, {keyOutput, &t.output}} {
		text, col := r.at(what.key)
		switch {
		case text == "" || text == *what.at:
		case *what.at == "":
			*what.at = r.name(text, col)
		default:
			r.refuse(col, fmt.Sprintf("Line %q is on %q here and on %q above.", t.name, text, *what.at), "A line has one; the first is kept.")
		}
	}
}

// stated gives a text, "" where it says that nothing is known.
func (r *row) stated(k key) string {
	text, col := r.at(k)
	if text == "not stated" || text == "-" {
		return ""
	}
	return r.name(text, col)
}

// says tells that the row says anything of a device.
func (r *row) says() bool {
	for _, k := range []key{keyTap, keyModel, keyLeg, keyImpedance, keyDevice, keyCable, keySpace, keyBehind} {
		if text, _ := r.at(k); text != "" {
			return true
		}
	}
	return false
}

// all gives every text of the row, to be kept.
func (r *row) all() []string {
	notes := r.notes
	for i := range r.of.columns {
		col := &r.of.columns[i]
		if text := r.text(col); col.key != unknown && text != "" {
			notes = append(notes, oneLine(col.head)+": "+text)
		}
	}
	return notes
}

// impedance is that of a loudspeaker without a transformer.
func (r *row) impedance() string {
	if text, _ := r.at(keyImpedance); text == "varies" { // as a schedule says where it is a curve
		r.notes = append(r.notes, "impedance over frequency: see the model")
		return ""
	}
	return amount(r, keyImpedance, quantity.Resistances)
}

// count is how many the row stands for; 0 where it does not say.
func (r *row) count() int {
	text, col := r.at(keyQuantity)
	if text == "" {
		return 0
	}
	n, err := strconv.ParseFloat(text, 64)
	if whole := int(n); err == nil && n >= 1 && n <= 10000 && float64(whole) <= n && float64(whole) >= n {
		if whole == 1 {
			return 0
		}
		return whole
	}
	r.refuse(col, fmt.Sprintf("%q is no quantity.", text), "It is a whole number from 1 to 10000.")
	return 0
}

// unique makes a name that no device of the line has yet.
func (t *table) unique(r *row, name string, col *column) string {
	if name == "" {
		name = fmt.Sprintf("Device %d", len(t.taken)+1)
		r.refuse(col, "The device has no designation.", fmt.Sprintf("It is called %q.", name))
	}
	folded := strings.ToLower(strings.ReplaceAll(name, " ", ""))
	if t.taken[folded]++; t.taken[folded] == 1 {
		return name
	}
	for n := t.taken[folded]; ; n++ {
		other := fmt.Sprintf("%s (%d)", name, n)
		if f := strings.ToLower(strings.ReplaceAll(other, " ", "")); t.taken[f] == 0 {
			t.taken[f] = 1
			r.refuse(col, fmt.Sprintf("The designation %q is there already on line %q.", name, t.name), fmt.Sprintf("This one is called %q.", other))
			return other
		}
	}
}

// place puts a device behind what encloses it.
func (t *table) place(r *row, d *device) {
	behind := r.stated(keyBehind)
	if behind == "" {
		t.devices = append(t.devices, d)
		return
	}
	outer := findDevice(t.devices, behind)
	if outer == nil { // named, and without a row of its own
		outer = &device{kind: kindAttenuator, name: behind, notes: []string{"named as what others are behind; it has no row of its own in the table"}}
		t.taken[strings.ToLower(strings.ReplaceAll(behind, " ", ""))]++
		t.devices = append(t.devices, outer)
	}
	if outer.kind != kindAttenuator && outer.kind != kindBranch {
		_, col := r.at(keyBehind)
		r.refuse(col, fmt.Sprintf("%q encloses nothing: it is %s.", behind, outer.kind), "Attenuators and branches do.")
		t.devices = append(t.devices, d)
		return
	}
	const deepest = 16
	depth := 0
	for o := outer; o != nil; o = o.within {
		depth++
	}
	if depth > deepest {
		_, col := r.at(keyBehind)
		r.refuse(col, fmt.Sprintf("More than %d devices are inside each other.", deepest), "It is put on the line itself.")
		t.devices = append(t.devices, d)
		return
	}
	d.within = outer
	outer.inside = append(outer.inside, d)
}

// findDevice looks for the last device of a name.
func findDevice(devices []*device, name string) *device {
	for _, d := range slices.Backward(devices) {
		if d.name == name {
			return d
		}
		if inner := findDevice(d.inside, name); inner != nil {
			return inner
		}
	}
	return nil
}

// remark reads the remarks of a schedule; others are kept.
func (d *device) remark(r *row) {
	text, _ := r.at(keyRemarks)
	for part := range strings.SplitSeq(text, ",") {
		switch part = strings.TrimSpace(part); part {
		case "", "typical data", "switched off": // follow from model and tap
		case "assumed":
			d.basis = "assumed"
		case "polarity reversed":
			d.polarity = "reversed"
		default:
			d.notes = append(d.notes, part)
		}
	}
}

// block writes the line.
func (t *table) block(c *converter) *block {
	b := &block{kind: "line", name: t.name}
	if t.amplifier != "" {
		b.set("amplifier", t.amplifier)
		c.amplifiers.add(t.amplifier)
	} else {
		b.comment(`amplifier = "…" is not in the table`)
	}
	switch {
	case t.output == "":
		b.comment(`output = "100 V", or another one of the amplifier, is not in the table`)
	case c.hasOutput(t.amplifier, t.output):
		b.set("output", t.output)
	default:
		b.comment(fmt.Sprintf("output = %s: say of the amplifier what voltage it has, and write it here", quote(t.output)))
	}
	cable := t.cable
	if cable == "" && len(t.devices) > 0 {
		cable = t.devices[0].cable
	}
	if c.hasCable(cable) {
		b.set("cable", cable)
	} else if cable != "" {
		b.comment(fmt.Sprintf("cable = %s: a cable_model of that name is not in the table", quote(cable)))
	}
	b.comments = append(b.comments, t.comments...)
	devices := fold(t.devices)
	home := t.homeRun
	if home == "" && len(devices) > 0 && devices[0].cable == cable {
		home, devices[0].leg = devices[0].leg, ""
	}
	b.set("home_run", home)
	b.set("length", t.length)
	b.set("ring_leg", t.ringLeg)
	if t.reverse {
		b.set("return", "reverse")
	}
	for _, d := range devices {
		b.children = append(b.children, d.block(c, cable, ""))
	}
	return b
}

// hasOutput tells that an amplifier has an output of a name, or that the name
// itself says its voltage.
func (c *converter) hasOutput(amplifier, output string) bool {
	if d := c.options.Design; d != nil {
		if u := d.Unit(amplifier); u != nil && u.Output(output) != nil {
			return true
		}
	}
	_, err := quantity.ParseVoltage(output)
	return err == nil
}

// hasCable tells that the name of a cable means something: a size, or a model.
func (c *converter) hasCable(name string) bool {
	if name == "" {
		return false
	}
	if d := c.options.Design; d != nil {
		if d.Cable(name) != nil || slices.ContainsFunc(d.Catalogue.Cables, func(m *schema.CableModel) bool { return m.Name == name }) {
			return true
		}
	}
	_, err := quantity.ParseConductors(name)
	return err == nil || c.typical(name)
}

// typical tells that the built-in catalogue has a model.
func (c *converter) typical(name string) bool {
	if !schema.IsTypical(name) {
		return false
	}
	if c.builtIn == nil {
		c.builtIn = map[string]bool{}
		if catalogue, err := schema.Typical(); err == nil {
			for _, m := range catalogue.Models() {
				c.builtIn[m.Name] = true
			}
		}
	}
	return c.builtIn[name]
}

// block writes a device and what is inside it. The cable is that which counts
// where it stands; prefix is what its name begins with because of runs around
// it.
func (d *device) block(c *converter, cable, prefix string) *block {
	name := d.name
	if d.quantity > 0 && d.base != "" {
		name = d.base
	}
	b := &block{kind: d.kind, name: strings.TrimPrefix(name, prefix), comments: d.notes}
	if d.quantity > 0 {
		b.bare("quantity", strconv.Itoa(d.quantity))
		if d.first > 1 {
			b.bare("first", strconv.Itoa(d.first))
		}
	}
	d.modelOf(c, b)
	b.set("tap", d.tap)
	b.set("tap_for", d.tapFor)
	b.set("load", d.load)
	b.set("impedance", d.impedance)
	b.set("leg", d.leg)
	b.set("spacing", d.spacing)
	switch {
	case d.cable == "" || d.cable == cable:
	case c.hasCable(d.cable):
		b.set("cable", d.cable)
		cable = d.cable
	default:
		b.comment(fmt.Sprintf("cable = %s: a cable_model of that name is not in the table", quote(d.cable)))
	}
	if d.kind == kindLoudspeaker {
		b.set("space", d.space)
		c.spaces.add(d.space)
	} else if d.space != "" {
		b.comment("space: " + d.space)
	}
	b.set("height", d.height)
	b.set("polarity", d.polarity)
	b.set("basis", d.basis)
	inner := prefix
	if d.quantity > 0 && d.base != "" {
		inner += strings.TrimPrefix(d.base, prefix) + " " + strconv.Itoa(d.first) + ", "
	}
	for _, i := range d.inside {
		b.children = append(b.children, i.block(c, cable, inner))
	}
	if len(d.inside) == 0 && d.kind == kindAttenuator {
		b.kind = kindBranch // an attenuator encloses something, or it is none
		b.comment("an attenuator, and nothing in the table is behind it")
	}
	return b
}

// modelOf writes the model, where the kind has one.
func (d *device) modelOf(c *converter, b *block) {
	switch {
	case d.model == "":
	case d.kind != kindLoudspeaker && d.kind != kindAttenuator:
		b.comment("model: " + d.model)
	case schema.IsTypical(d.model) && !c.typical(d.model):
		b.comment(fmt.Sprintf("model = %s: the built-in catalogue has none of that name", quote(d.model)))
	default:
		b.set("model", d.model)
		switch {
		case schema.IsTypical(d.model):
		case d.kind == kindAttenuator:
			c.controls.add(d.model)
		default:
			c.models.add(d.model)
		}
	}
}
