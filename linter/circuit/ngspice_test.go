package circuit_test

import (
	"bytes"
	"context"
	"encoding/json"
	"errors"
	"flag"
	"fmt"
	"math"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"strings"
	"testing"
	"time"

	"loudlint/linter/circuit"
)

// update records the answers of ngspice anew:
//
//	go test ./linter/circuit -run Ngspice -update
//
// It is needed when randomTree changes.
var update = flag.Bool("update", false, "record testdata/ngspice.json anew with the ngspice installed here")

const recordedFile = "testdata/ngspice.json"

// The agreement asked for with a general circuit simulator, as a part of each figure.
const ngspiceTolerance = 1e-6

// recording is what ngspice answered: for each tree (a seed of randomTree) the voltage of every node and the current the
// source gives, as real and imaginary parts.
type recording struct {
	About   string
	Ngspice string
	Trees   []recordedTree
}

type recordedTree struct {
	Seed       uint64
	Kind       int // index into everyKind
	Volts      [][2]float64
	SourceAmps [2]float64
}

// ngspiceTrees lists the trees that are compared.
func ngspiceTrees() []recordedTree {
	var trees []recordedTree
	for k := range everyKind {
		for seed := range uint64(12) {
			trees = append(trees, recordedTree{Seed: 5000 + seed, Kind: k})
		}
	}
	return trees
}

// The recorded answers are compared on every machine.
func TestNgspiceRecorded(t *testing.T) {
	if *update {
		t.Skip("recording anew, see TestNgspiceLive")
	}
	t.Parallel()
	text, err := os.ReadFile(recordedFile)
	if err != nil {
		t.Fatal(err)
	}
	var r recording
	if err := json.Unmarshal(text, &r); err != nil {
		t.Fatal(err)
	}
	if len(r.Trees) != len(ngspiceTrees()) {
		t.Fatalf("%s holds %d trees, want %d; record it anew with -update", recordedFile, len(r.Trees), len(ngspiceTrees()))
	}
	compareWithNgspice(t, r.Trees)
}

// The live comparison runs where ngspice is installed.
func TestNgspiceLive(t *testing.T) {
	t.Parallel()
	program, err := exec.LookPath("ngspice")
	if err != nil {
		if *update {
			t.Fatal("ngspice is not installed; it is needed to record its answers")
		}
		t.Skip("ngspice is not installed: only its recorded answers are compared")
	}
	trees := ngspiceTrees()
	runNgspice(t, program, trees)
	compareWithNgspice(t, trees)
	if *update && !t.Failed() {
		record(t, program, trees)
	}
}

func compareWithNgspice(t *testing.T, trees []recordedTree) {
	t.Helper()
	worst := 0.0
	for _, r := range trees {
		tr := randomTree(r.Seed, everyKind[r.Kind])
		if len(r.Volts) != len(tr.edges)+1 {
			t.Fatalf("seed %d kind %d: %d nodes recorded, the tree has %d; record anew with -update", r.Seed, r.Kind, len(r.Volts), len(tr.edges)+1)
		}
		sol := tr.solve(t)
		compare := func(what string, got complex128, want [2]float64, floor float64) {
			d := off(got, complex(want[0], want[1]), floor)
			worst = max(worst, d)
			if !(d <= ngspiceTolerance) {
				t.Errorf("seed %d kind %d: %s: %v, ngspice %v", r.Seed, r.Kind, what, got, want)
			}
		}
		for node, volts := range r.Volts {
			compare(fmt.Sprintf("volts at node %d", node), sol.Volts(circuit.Node(node)), volts, 1e-9)
		}
		compare("source current", sol.SourceAmps, r.SourceAmps, 1e-9)
	}
	t.Logf("%d trees, largest difference %.1e", len(trees), worst)
}

// runNgspice asks ngspice for all trees, one run for each frequency that occurs: within a run the trees are separate
// circuits of one netlist.
func runNgspice(t *testing.T, program string, trees []recordedTree) {
	t.Helper()
	byFrequency := map[float64][]int{}
	for i, r := range trees {
		hz := randomTree(r.Seed, everyKind[r.Kind]).hz
		byFrequency[hz] = append(byFrequency[hz], i)
	}
	for hz, indices := range byFrequency {
		folder := t.TempDir()
		var deck bytes.Buffer
		fmt.Fprintf(&deck, "loudspeaker lines at %g Hz\n", hz)
		for _, i := range indices {
			writeNetlist(&deck, fmt.Sprintf("t%d", i), randomTree(trees[i].Seed, everyKind[trees[i].Kind]))
		}
		// A raw file in text form has 15 decimals whatever numdgt says; print would have 6.
		fmt.Fprintf(&deck, ".control\nset filetype=ascii\nac lin 1 %[1]s %[1]s\nwrite answer.raw\nquit\n.endc\n.end\n", full(hz))
		if err := os.WriteFile(filepath.Join(folder, "lines.cir"), deck.Bytes(), 0o600); err != nil {
			t.Fatal(err)
		}
		ctx, cancel := context.WithTimeout(t.Context(), time.Minute)
		command := exec.CommandContext(ctx, program, "-b", "lines.cir")
		command.Dir = folder
		output, err := command.CombinedOutput()
		cancel()
		if err != nil {
			t.Fatalf("ngspice: %v\n%s", err, output)
		}
		raw, err := os.ReadFile(filepath.Join(folder, "answer.raw"))
		if err != nil {
			t.Fatalf("ngspice gave no answer: %v\n%s", err, output)
		}
		answer, err := parseRaw(string(raw))
		if err != nil {
			t.Fatal(err)
		}
		for _, i := range indices {
			r, prefix := &trees[i], fmt.Sprintf("t%d", i)
			for node := range len(randomTree(r.Seed, everyKind[r.Kind]).edges) + 1 {
				volts, ok := answer[fmt.Sprintf("v(%su%d)", prefix, node)]
				if !ok {
					volts, ok = answer[fmt.Sprintf("v(%sn%d)", prefix, node)]
				}
				if !ok {
					t.Fatalf("ngspice did not answer for node %d of tree %d", node, i)
				}
				r.Volts = append(r.Volts, volts)
			}
			amps, ok := answer[fmt.Sprintf("i(v%s)", prefix)]
			if !ok {
				t.Fatalf("ngspice did not answer for the source of tree %d", i)
			}
			r.SourceAmps = [2]float64{-amps[0], -amps[1]} // its sign: positive into the source
		}
	}
}

// writeNetlist writes a tree with its loops. Nodes are <prefix>n0, n1 …; internal ones carry the name of their element. The
// second conductor is ground but where that of a reverse return lies apart: there it has nodes <prefix>r1, r2 …, and
// <prefix>u1, u2 … are the voltages between the two, for ngspice writes potentials.
func writeNetlist(w *bytes.Buffer, prefix string, tr tree) {
	node := func(n circuit.Node) string { return fmt.Sprintf("%sn%d", prefix, n) }
	omega := 2 * math.Pi * tr.hz
	// ngspice makes a resistor of 0 ohm one of 1 mohm: a source of 0 V is a wire.
	resistor := func(name, from, to string, ohm float64) {
		if ohm > 0 {
			fmt.Fprintf(w, "R%s %s %s %s\n", name, from, to, full(ohm))
		} else {
			fmt.Fprintf(w, "V%s %s %s 0\n", name, from, to)
		}
	}
	fmt.Fprintf(w, "V%s %s 0 dc 0 ac %s\n", prefix, node(0), full(tr.volts))
	leads, low := tr.sections(), make([]string, len(tr.edges)+1)
	low[0] = "0"
	for i, e := range tr.edges {
		low[i+1] = low[e.from]
		if leads[i+1] == apart || tr.begins(circuit.Node(i+1)) {
			low[i+1] = fmt.Sprintf("%sr%d", prefix, i+1)
		}
		if low[i+1] != "0" {
			fmt.Fprintf(w, "E%su%d %su%d 0 %s %s 1\n", prefix, i+1, prefix, i+1, node(circuit.Node(i+1)), low[i+1])
		}
	}
	leg := func(name, from, to string, leg circuit.Leg) {
		if leg.LHenry > 0 {
			resistor(name, from, name+"x", leg.ROhm)
			fmt.Fprintf(w, "L%s %sx %s %s\n", name, name, to, full(leg.LHenry))
		} else {
			resistor(name, from, to, leg.ROhm)
		}
	}
	capacitor := func(name string, at circuit.Node, farad float64) {
		if farad > 0 {
			fmt.Fprintf(w, "C%s %s %s %s\n", name, node(at), low[at], full(farad))
		}
	}
	for i, l := range tr.loops {
		name := fmt.Sprintf("%so%d", prefix, i)
		if l.reverse {
			leg(name, low[l.far], "0", l.leg)
			continue
		}
		leg(name, node(0), node(l.far), l.leg)
		capacitor(name+"a", 0, l.leg.CFarad/2)
		capacitor(name+"b", l.far, l.leg.CFarad/2)
	}
	for i, e := range tr.edges {
		name, from, to := fmt.Sprintf("%sk%d", prefix, i+1), node(e.from), node(circuit.Node(i+1))
		if e.isAttenuator {
			// The output is a voltage source of a·b·V_in; what it gives is measured and drawn a-fold from the input.
			v, a := e.factors()
			second := low[i+1]
			fmt.Fprintf(w, "E%s %sx %s %s %s %s\n", name, name, second, from, second, full(v))
			fmt.Fprintf(w, "V%sm %sx %s 0\n", name, name, to)
			fmt.Fprintf(w, "F%s %s %s V%sm %s\n", name, from, second, name, full(a))
			continue
		}
		if leads[i+1] == apart {
			half := circuit.Leg{ROhm: e.leg.ROhm / 2, LHenry: e.leg.LHenry / 2}
			leg(name, from, to, half)
			leg(name+"r", low[e.from], low[i+1], half)
		} else {
			leg(name, from, to, e.leg)
		}
		if leads[i+1] != goAlone {
			capacitor(name+"a", e.from, e.leg.CFarad/2)
			capacitor(name+"b", circuit.Node(i+1), e.leg.CFarad/2)
		}
	}
	for i, h := range tr.loads {
		from := node(h.at)
		for j, part := range h.parts {
			name := fmt.Sprintf("%sd%dp%d", prefix, i, j)
			to := name + "y"
			if j == len(h.parts)-1 {
				to = low[h.at]
			}
			z := impedance(part, tr.hz) // at this frequency a resistance with an inductance or a capacitance
			switch {
			case imag(z) > 0:
				resistor(name, from, name+"x", real(z))
				fmt.Fprintf(w, "L%s %sx %s %s\n", name, name, to, full(imag(z)/omega))
			case imag(z) < 0:
				resistor(name, from, name+"x", real(z))
				fmt.Fprintf(w, "C%s %sx %s %s\n", name, name, to, full(-1/(imag(z)*omega)))
				// Lets direct current through, which ngspice solves first and needs a path for.
				fmt.Fprintf(w, "R%sg %sx %s 1e15\n", name, name, to)
			default:
				resistor(name, from, to, real(z))
			}
			from = to
		}
	}
}

// parseRaw reads the one point of a complex raw file in text form: a list of names, then a list of "re,im".
func parseRaw(raw string) (map[string][2]float64, error) {
	_, rest, ok := strings.Cut(raw, "\nVariables:\n")
	variables, values, found := strings.Cut(rest, "Values:\n")
	if !ok || !found {
		return nil, errors.New("reading a raw file of ngspice: no variables or values")
	}
	names := strings.Split(strings.TrimSpace(variables), "\n")
	// The first value stands after the number of the point.
	fields := strings.Fields(values)
	if len(fields) != len(names)+1 {
		return nil, fmt.Errorf("reading a raw file of ngspice: %d values for %d names", len(fields)-1, len(names))
	}
	answer := map[string][2]float64{}
	for i, line := range names {
		columns := strings.Fields(line) // index, name, kind
		re, im, _ := strings.Cut(fields[i+1], ",")
		x, errX := strconv.ParseFloat(re, 64)
		y, errY := strconv.ParseFloat(im, 64)
		if len(columns) < 2 || errX != nil || errY != nil {
			return nil, fmt.Errorf("reading a raw file of ngspice: %q has value %q", line, fields[i+1])
		}
		answer[columns[1]] = [2]float64{x, y}
	}
	return answer, nil
}

// record writes the answers, one tree a line.
func record(t *testing.T, program string, trees []recordedTree) {
	t.Helper()
	output, err := exec.CommandContext(t.Context(), program, "--version").CombinedOutput()
	if err != nil {
		t.Fatal(err)
	}
	version := ""
	for word := range strings.FieldsSeq(string(output)) {
		if strings.HasPrefix(word, "ngspice-") {
			version = word
			break
		}
	}
	if version == "" {
		t.Fatalf("ngspice does not say its version: %s", output)
	}
	var text bytes.Buffer
	fmt.Fprintf(&text, "{\n  \"About\": %q,\n  \"Ngspice\": %q,\n  \"Trees\": [\n",
		"Answers of the circuit simulator ngspice, AC analysis, to the trees, with rings and reverse returns, that randomTree makes of Seed and Kind: volts of each node between its conductors and amperes of the source, [real, imaginary]. Written by: go test ./linter/circuit -run Ngspice -update",
		version)
	for i, r := range trees {
		line, err := json.Marshal(r)
		if err != nil {
			t.Fatal(err)
		}
		separator := ","
		if i == len(trees)-1 {
			separator = ""
		}
		fmt.Fprintf(&text, "    %s%s\n", line, separator)
	}
	text.WriteString("  ]\n}\n")
	if err := os.WriteFile(recordedFile, text.Bytes(), 0o600); err != nil {
		t.Fatal(err)
	}
}

func full(x float64) string { return strconv.FormatFloat(x, 'g', 17, 64) }
