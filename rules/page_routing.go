package rules

import (
	"fmt"
	"slices"
	"strings"

	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/schema"
	"loudlint/schema/wording"
)

// PageRouting asks whether the hardware can do what a source promises.
var PageRouting = &check.Check{
	ID:      "page-routing",
	Asks:    "Can this hardware bring each source to the lines it is meant for, and choose among them where it is meant to?",
	Summary: "A source cannot reach a line it is meant for, or cannot choose among its lines as it is meant to.",
	Why: "A desk with a key for every floor is of no use on an amplifier that gives the same to all of its outputs, and a line that no way leads to stays silent in the first fire drill. " +
		"Both show on paper, and neither can be put right with the equipment that was ordered.",
	How: "Follows the source through inputs, sends and outputs to the lines it names (lines). Where it is to page some without the others (selectable), looks for the units on the way that " +
		"can part them: those that route any input to any output, or whose outputs are switched. A desk with keys chooses in the unit it is plugged into, and nowhere behind it; " +
		"without keys somebody sets switches. Then compares how many destinations the desk can choose with how many there are. Of a source that names its lines, asks whether another line hears it too, whether what stands on them is set to off and nothing lifts it (attenuators), and, of announcements, whether outputs on the way that somebody can switch off open for them (opens_outputs); the keys of a desk open what they choose. Units whose signal comes back to them are found on the way.",
	Basis: "common practice, no published source",
	Blind: "What a unit can do is taken from its routing and its switched outputs. Who may page where, and what happens when two page at once, " +
		"are matters of the unit's settings. Whether a signal comes back stays open where a unit's routing is not stated. Spaces that share a line cannot be told apart by any desk, which is no promise broken.",
	Severity: check.Error,
	Cautions: []string{"Page every line on its own before handover, and all of them together."},
	Failing: check.Example{
		Shows: "A desk is to choose between two floors that hang on one output.",
		Design: `amplifier "Rack" {
  rated_power = "120 W"
  routing     = "one programme, all lines"
  input "Desk" {
    takes   = "paging desk"
    selects = "each output"
  }
}
line "Floor 1" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "A" { tap = "30 W" }
}
line "Floor 2" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "B" { tap = "30 W" }
}
microphone "Reception" {
  into       = "Rack"
  input      = "Desk"
  lines      = "all"
  selectable = true
}
`,
	},
	Passing: check.Example{
		Shows: "Each floor has a switched output.",
		Design: `amplifier "Rack" {
  rated_power = "120 W"
  routing     = "one programme, lines switched"
  output "Zone" {
    quantity = 2
    volts    = "100 V"
    switched = true
  }
  input "Desk" {
    takes   = "paging desk"
    selects = "each output"
  }
}
line "Floor 1" {
  amplifier = "Rack"
  output    = "Zone 1"
  loudspeaker "A" { tap = "30 W" }
}
line "Floor 2" {
  amplifier = "Rack"
  output    = "Zone 2"
  loudspeaker "B" { tap = "30 W" }
}
microphone "Reception" {
  into       = "Rack"
  input      = "Desk"
  lines      = "all"
  selectable = true
}
`,
	},
	Judge: check.Together(check.EachSource(pageRouting), check.EachUnit(signalLoops)),
}

func pageRouting(r *check.Report, src *analysis.Source) {
	part := src.Part
	if !part.Lines.Set() && !part.Selectable.V || len(src.Lines) == 0 {
		r.NotAsked() // nothing is promised, or unfed says that it goes nowhere
		return
	}
	unreachedLines(r, src)
	sel := r.System().Selecting(src)
	if part.Selectable.V {
		selectableLines(r, src, sel)
	}
	alongLines(r, src, sel)
	if part.Announces() {
		turnedOff(r, src)
		switchedOff(r, src, sel)
	}
	if len(src.Unreached) == 0 && !part.Selectable.V {
		r.Pass(fmt.Sprintf("%s reaches %s.", part.Name, listedLines(src.Lines))).Key("reach").At(inside(&part.Part, part.Lines.Span))
	}
}

func listedLines(lines []*analysis.Line) string {
	names := make([]string, len(lines))
	for n, l := range lines {
		names[n] = l.Part.Name
	}
	return listed(names)
}

// unreachedLines answers for lines to which no way leads.
func unreachedLines(r *check.Report, src *analysis.Source) {
	if len(src.Unreached) == 0 {
		return
	}
	a := r.Fail(check.Error, fmt.Sprintf("%s is meant for %s, and no way leads there from %s.", src.Part.Name, listedLines(src.Unreached), pluggedInputs(src))).
		Key("reach").At(inside(&src.Part.Part, src.Part.Lines.Span))
	seen := map[*schema.Unit]bool{}
	for _, l := range src.Unreached {
		if u := l.Part.AmplifierPart; u != nil && !seen[u] {
			seen[u] = true
			a.See(u.Header, fmt.Sprintf("feeds %s", l.Part.Name))
		}
	}
	a.Remedy(check.Advice, fmt.Sprintf("Write the send that leads to the amplifier of %s, a second place %s is plugged into (also), or leave the line out of its lines.", src.Unreached[0].Part.Name, src.Part.Name))
}

func pluggedInputs(src *analysis.Source) string {
	var names []string
	for _, f := range src.Feeds {
		if f.Into != nil && !f.Into.Contact() {
			names = append(names, f.Into.Name())
		}
	}
	return listed(names)
}

// selectableLines answers for a source that is to page some lines without others.
func selectableLines(r *check.Report, src *analysis.Source, sel *analysis.Selecting) {
	place := inside(&src.Part.Part, src.Part.Selectable.Span)
	name := src.Part.Name
	switch {
	case len(src.Lines) < 2 && len(sel.Along) > 0:
		r.Fail(check.Error, fmt.Sprintf("%s is to page %s without the others, and nothing on the way parts %s from it.", name, listedLines(src.Lines), listedLines(sel.Along))).Key("choice").At(place).
			See(sel.Along[0].Part.Header, "gets every page too").
			Remedy(check.Advice, "Choose a unit with a switched output for each line, or one that sends any input to any output.").
			Remedy(check.Computed, fmt.Sprintf("Let it page %s too, all of them together.", listedLines(sel.Along)),
				check.Write(&src.Part.Part, src.Part.Selectable.Span, "selectable", "false"), nameToo(src, sel.Along))
		return
	case len(src.Lines) < 2 && len(sel.AlongMissing) > 0:
		r.Open(fmt.Sprintf("Whether %s can page %s without the others cannot be told.", name, listedLines(src.Lines)), sel.AlongMissing...).Key("choice").At(place)
		return
	case len(src.Lines) < 2:
		r.Pass(fmt.Sprintf("%s has one line to page.", name)).Key("choice").At(place)
		return
	case len(sel.Destinations) < 2 && len(sel.Missing) > 0:
		r.Open(fmt.Sprintf("Whether %s can page some of its lines without the others cannot be told.", name), sel.Missing...).Key("choice").At(place)
		return
	case len(sel.Destinations) < 2:
		nothingParts(r, src, sel)
		return
	case sel.Keys:
		if keysShort(r, src, sel) {
			return
		}
	}
	if shared := sharedDestination(sel.Destinations); shared != nil {
		r.Fail(check.Note, fmt.Sprintf("%s pages %s together: nothing parts them on the way.", name, listedLines(shared))).Key("choice").At(place).
			See(shared[0].Part.Header, "one of them").See(shared[1].Part.Header, "another").
			Remedy(check.Advice, "Give each an output of its own where they are to be paged one by one.")
		return
	}
	switch {
	case len(sel.Always) > 0:
		r.Fail(check.Note, fmt.Sprintf("Whatever %s pages, %s %s it too: nothing on the way there can be closed.", name, listedLines(sel.Always), verb(len(sel.Always), "hears", "hear"))).Key("choice").At(place).
			See(sel.Always[0].Part.Header, "hears it too").
			Remedy(check.Advice, "Give it a switched output too where it is to be left out.")
		return
	case len(sel.AlwaysMissing) > 0:
		r.Open(fmt.Sprintf("Whether %s can page each of its lines without the others cannot be told.", name), sel.AlwaysMissing...).Key("choice").At(place)
		return
	}
	a := r.Pass(fmt.Sprintf("%s can page each of %s by itself.", name, listedLines(src.Lines))).Key("choice").At(place)
	if !sel.Keys {
		a.Assumed(fmt.Sprintf("somebody sets the outputs of %s by hand for each page: %s has no keys for lines", unitNames(sel.At), name))
	}
}

// nameToo is the edit that names more lines of a source.
func nameToo(src *analysis.Source, more []*analysis.Line) check.Edit {
	var names []string
	for _, n := range src.Part.Lines.Names {
		names = append(names, quoted(n.V))
	}
	for _, l := range more {
		names = append(names, quoted(l.Part.Name))
	}
	return check.Write(&src.Part.Part, src.Part.Lines.Span, "lines", "["+strings.Join(names, ", ")+"]")
}

// alongLines answers for lines that a source does not name and that hear it all the
// same. Of one that is to page a single line alone, selectableLines tells it.
func alongLines(r *check.Report, src *analysis.Source, sel *analysis.Selecting) {
	selects := src.Part.Selectable.V
	if selects && len(sel.Destinations) < 2 {
		return
	}
	name, place := src.Part.Name, inside(&src.Part.Part, src.Part.Lines.Span)
	switch {
	case len(sel.Along) > 0 && selects:
		r.Fail(check.Warning, fmt.Sprintf("%s is to page %s, and %s %s pages that are not meant for it: nothing parts it from them.", name, listedLines(src.Lines), listedLines(sel.Along), verb(len(sel.Along), "hears", "hear"))).
			Key("along").At(place).See(sel.Along[0].Part.Header, "hears pages for others").
			Remedy(check.Advice, "Give each an output of its own where they are to be paged one by one, or name it among the lines.")
	case len(sel.Along) > 0:
		r.Fail(check.Note, fmt.Sprintf("%s is meant for %s, and %s %s it too: nothing parts %s from them.", name, listedLines(src.Lines), listedLines(sel.Along), verb(len(sel.Along), "hears", "hear"), verb(len(sel.Along), "it", "them"))).
			Key("along").At(place).See(sel.Along[0].Part.Header, "hears it too").
			Remedy(check.Computed, fmt.Sprintf("Name %s too if it may be heard there.", listedLines(sel.Along)), nameToo(src, sel.Along)).
			Remedy(check.Advice, "Choose a unit that can keep it off that output.")
	case len(sel.AlongMissing) > 0:
		r.Open(fmt.Sprintf("Whether %s is kept off the lines that it does not name cannot be told.", name), sel.AlongMissing...).Key("along").At(place)
	}
}

// turnedOff answers for lines whose loudspeakers stand behind attenuators that are
// set to off.
func turnedOff(r *check.Report, src *analysis.Source) {
	for _, l := range src.Lines {
		off, by, unsaid := l.TurnedOff()
		name, place := src.Part.Name, inside(&src.Part.Part, src.Part.Lines.Span)
		if off > 0 {
			severity, what := check.Warning, fmt.Sprintf("%d of its %d loudspeakers stand", off, l.Loudspeakers)
			if off == 1 {
				what = fmt.Sprintf("one of its %d loudspeakers stands", l.Loudspeakers)
			}
			if off >= l.Loudspeakers {
				severity, what = check.Error, "all of its loudspeakers stand"
				if off == 1 {
					what = "its loudspeaker stands"
				}
			}
			a := r.Fail(severity, fmt.Sprintf("%s is meant for %s, and %s behind %s, set to off, with nothing that lifts it.", name, l.Part.Name, what, blockNames(by))).
				Key("turned off on " + l.Part.Name).At(place)
			for _, one := range by {
				a.See(one.Part.Setting.Span, "set to off").See(readable(one.Part.Override.Span), "nothing lifts it")
			}
			a.Remedy(check.Advice, "Fit an attenuator that is lifted for announcements, or turn it up and take its knob off.")
			continue
		}
		var missing []analysis.Missing
		for _, one := range unsaid {
			missing = append(missing, one.Missing("what lifts the attenuator for announcements", `override = "24 V relay"`))
		}
		if len(missing) > 0 {
			r.Open(fmt.Sprintf("Whether %s is heard on %s, behind %s set to off, cannot be told.", name, l.Part.Name, blockNames(unsaid)), missing...).Key("turned off on " + l.Part.Name).At(place)
		}
	}
}

// switchedOff answers for outputs on the way that somebody can switch off. Where
// somebody sets outputs by hand for each page, they are set to on.
func switchedOff(r *check.Report, src *analysis.Source, sel *analysis.Selecting) {
	if src.Part.Selectable.V && !sel.Keys {
		return
	}
	var left, can []*analysis.SwitchedOff
	var missing []analysis.Missing
	for _, o := range sel.SwitchedOff() {
		switch {
		case o.Unsaid && o.Into.Part == nil:
			for _, f := range o.Into.Feeds {
				missing = analysis.MergeMissing(missing, []analysis.Missing{f.MissingInput()})
			}
			for _, k := range o.Into.Links {
				missing = analysis.MergeMissing(missing, []analysis.Missing{k.MissingInput()})
			}
		case o.Unsaid:
			missing = analysis.MergeMissing(missing, []analysis.Missing{o.Into.Missing("whether an announcement is heard on switched outputs that are off", "opens_outputs = true")})
		case o.Left:
			left = append(left, o)
		default:
			can = append(can, o)
		}
	}
	name, place := src.Part.Name, inside(&src.Part.Part, src.Part.Lines.Span)
	if len(left) > 0 {
		a := r.Fail(check.Error, fmt.Sprintf("%s is meant for %s, and is not heard there: %s switched off, and %s does not open %s.", name, listedLines(behind(left)), zones(left), left[0].Into.Name(), verb(len(left), "it", "them"))).
			Key("left off").At(place)
		for _, o := range left {
			a.See(o.Output.Setting.Span, "left switched off")
		}
		a.See(readable(left[0].Into.Part.OpensOutputs.Span), "does not open outputs").
			Remedy(check.Advice, fmt.Sprintf("Leave %s switched on, or bring %s in by an input that opens outputs.", verb(len(left), "it", "them"), name))
	}
	if len(can) > 0 {
		severity := check.Note
		switch {
		case r.System().Design.System.Emergency():
			severity = check.Error
		case src.Part.Priority.Set():
			severity = check.Warning
		}
		a := r.Fail(severity, fmt.Sprintf("%s is meant for %s, and is not heard there while somebody has switched %s off: %s does not open %s.", name, listedLines(behind(can)), outputNames(can), can[0].Into.Name(), verb(len(can), "it", "them"))).
			Key("can be off").At(place)
		a.See(readable(can[0].Into.Part.OpensOutputs.Span), "does not open outputs").
			Remedy(check.Advice, fmt.Sprintf("Bring %s in by an input that opens outputs which are off, or keep people from the switches.", name))
	}
	if len(missing) > 0 {
		r.Open(fmt.Sprintf("Whether %s is heard on outputs that somebody has switched off cannot be told.", name), missing...).Key("off").At(place)
	}
}

func behind(all []*analysis.SwitchedOff) []*analysis.Line {
	var lines []*analysis.Line
	for _, o := range all {
		lines = append(lines, o.Lines...)
	}
	return lines
}

func outputNames(all []*analysis.SwitchedOff) string {
	names := make([]string, len(all))
	for n, o := range all {
		names[n] = o.Output.Name
	}
	return listed(names) + " of " + all[0].Unit.Part.Name
}

func zones(all []*analysis.SwitchedOff) string {
	return outputNames(all) + " " + verb(len(all), "is", "are")
}

func unitNames(units []*analysis.Unit) string {
	names := make([]string, len(units))
	for n, u := range units {
		names[n] = u.Part.Name
	}
	return listed(names)
}

// sharedDestination gives lines that are always paged together.
func sharedDestination(all [][]*analysis.Line) []*analysis.Line {
	for _, lines := range all {
		if len(lines) > 1 {
			return lines
		}
	}
	return nil
}

// nothingParts answers where all lines of a source always get the same.
func nothingParts(r *check.Report, src *analysis.Source, sel *analysis.Selecting) {
	says := fmt.Sprintf("%s is to page some lines without the others, and nothing on the way parts %s.", src.Part.Name, listedLines(src.Lines))
	if len(sel.Later) > 1 {
		says = fmt.Sprintf("%s is to page some lines without the others, and its keys choose in %s, behind which all lines still get the same.", src.Part.Name, pluggedInputs(src))
	}
	a := r.Fail(check.Error, says).Key("choice").At(inside(&src.Part.Part, src.Part.Selectable.Span))
	for _, f := range src.Feeds {
		if f.Into != nil {
			a.See(readable(f.Into.Unit.Part.Routing.Span), "what "+f.Into.Unit.Part.Name+" can send where")
		}
	}
	a.Remedy(check.Advice, "Choose a unit with a switched output for each line, or one that sends any input to any output, and a desk with keys for them.")
	a.Remedy(check.Computed, "Let it page all of its lines together.", check.Write(&src.Part.Part, src.Part.Selectable.Span, "selectable", "false"))
}

// keysShort answers for a desk whose keys do not do it: too few, or on an input
// that understands none.
func keysShort(r *check.Report, src *analysis.Source, sel *analysis.Selecting) bool {
	keys, place := src.Part.Selects, inside(&src.Part.Part, src.Part.Selectable.Span)
	if keys.Set() && keys.V < len(sel.Destinations) {
		r.Fail(check.Error, fmt.Sprintf("%s can choose %s and has %d to choose from.", src.Part.Name, wording.Counted(keys.V, "destination"), len(sel.Destinations))).Key("keys").At(place).
			Evidence(check.Number("destinations it can choose", float64(keys.V), "")).
			Bound(check.Bound{Text: fmt.Sprintf("at least %d", len(sel.Destinations)), Number: float64(len(sel.Destinations)), Basis: "one for each line or group of lines that the hardware parts"}).
			See(readable(keys.Span), "how many it can choose").
			Remedy(check.Advice, fmt.Sprintf("Take a desk with %d keys or more, or let some lines share one.", len(sel.Destinations)))
		return true
	}
	for _, f := range src.Feeds {
		if f.Into == nil || f.Into.Part == nil || f.Into.Contact() {
			continue
		}
		i := f.Into
		chooses := strings.ToLower(strings.TrimSpace(i.Part.Selects.V))
		switch {
		case slices.Contains([]string{"none", "nothing", "all"}, chooses),
			!i.Part.Selects.Set() && i.Part.Takes.Set() && i.Part.Takes.V != deskData:
			r.Fail(check.Error, fmt.Sprintf("%s has keys for lines, and %s understands none: it takes %s.", src.Part.Name, i.Name(), sayTakes(i))).Key("keys").At(pluggedAt(f)).
				See(readable(i.Part.Takes.Span), "what "+i.Name()+" takes").See(readable(i.Part.Selects.Span), "what can be chosen there").
				Remedy(check.Advice, fmt.Sprintf("Plug %s into an input for a paging desk.", src.Part.Name))
			return true
		case chooses != "each output":
			r.Open(fmt.Sprintf("What %s can choose at %s cannot be told.", src.Part.Name, i.Name()), i.Missing("what a desk on it can choose", `selects = "each output"`)).Key("keys").At(place)
			return true
		}
	}
	return false
}

func sayTakes(i *analysis.Input) string {
	if i.Part.Takes.V == deskData || !i.Part.Takes.Set() {
		return "no choice of lines"
	}
	return "the signal of a " + i.Part.Takes.V
}

// signalLoops answers for loops, once for each, at its first unit.
func signalLoops(r *check.Report, u *analysis.Unit) {
	r.NotAsked() // until a loop is found
	for _, loop := range r.System().Loops {
		if loop[0] != u {
			continue
		}
		severity, says := check.Warning, "it howls or swings up as soon as the levels allow it"
		var unsaid []analysis.Missing
		for _, of := range loop {
			switch routing := of.Part.Routing; {
			case !routing.Set():
				unsaid = append(unsaid, analysis.Missing{What: "routing", Part: of.Named(), Where: of.Part.Header, Write: `routing = "one programme, all lines"`})
			case routing.V == "any input to any output", routing.V == "fixed":
				severity, says = check.Note, fmt.Sprintf("see that %s never sends it back there", of.Part.Name)
			}
		}
		key := "loop through " + unitNames(loop)
		if len(unsaid) > 0 && severity == check.Warning {
			a := r.Open(fmt.Sprintf("Whether the signal of %s comes back to where it was cannot be told.", unitNames(loop)), unsaid...).Key(key)
			for _, l := range analysis.Returning(loop) {
				a.At(linkedAt(l))
			}
			continue
		}
		a := r.Fail(severity, fmt.Sprintf("The signal of %s comes back to where it was: %s.", unitNames(loop), says)).Key(key)
		for k, l := range analysis.Returning(loop) {
			if k == 0 {
				a.At(linkedAt(l))
			}
			a.See(linkedAt(l), fmt.Sprintf("%s leads back to %s", l.Part.Send.Name, l.Into.Unit.Part.Name))
		}
		a.Remedy(check.Advice, "Take out the send that leads back, or use a unit in which that input does not reach that output.")
	}
}
