package report

import (
	"bytes"
	"context"
	"fmt"
	"math"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"
	"time"

	"golang.org/x/net/html"

	"loudlint/linter"
	"loudlint/linter/drawing"
	"loudlint/linter/schedule"
	"loudlint/rules"
	"loudlint/schema"
	"loudlint/schema/schematest"
	"loudlint/schema/source"
)

var options = Options{Tool: "loudlint", Schedules: schedule.Usual()}

func judgedText(t testing.TB, text string) (*linter.Judged, bool) {
	t.Helper()
	file := source.NewFile("made.pa.hcl", []byte(text))
	design, problems := schema.Read(file.Name, []*source.File{file}, schema.Options{})
	if len(problems) > 0 {
		return nil, false
	}
	return linter.Judge(design, linter.Options{Checks: rules.All()}), true
}

func example(t testing.TB, name string) *linter.Judged {
	t.Helper()
	j := linter.Check([]string{"../../examples/" + name + schema.Ending}, linter.Options{Checks: rules.All()}).Designs[0]
	if !j.Understood() {
		t.Fatalf("%s is not understood: %v %v", name, j.Err, j.Problems)
	}
	return j
}

func written(t testing.TB, j *linter.Judged) []byte {
	t.Helper()
	var out bytes.Buffer
	if err := Write(&out, j, options); err != nil {
		t.Fatal(err)
	}
	return out.Bytes()
}

// structure walks a page and lists what is wrong with its build.
func structure(page []byte) []string {
	root, err := html.Parse(bytes.NewReader(page))
	if err != nil {
		return []string{err.Error()}
	}
	known := map[string]bool{}
	for tag := range strings.FieldsSeq("html head meta title style body a header p h1 h2 h3 table caption thead tbody tr th td nav ul li main section article span br dl dt dd code figure svg desc rect text path circle div footer strong b") {
		known[tag] = true
	}
	var wrong []string
	ids := map[string]bool{}
	var links []string
	level, firsts := 0, 0
	for n := range root.Descendants() {
		if n.Type != html.ElementNode {
			continue
		}
		if !known[n.Data] {
			wrong = append(wrong, "an element "+n.Data)
		}
		has := map[string]string{}
		for _, a := range n.Attr {
			has[a.Key] = a.Val
			if strings.HasPrefix(a.Key, "on") || a.Key == "src" || a.Key == "style" {
				wrong = append(wrong, "an attribute "+a.Key)
			}
		}
		if id := has["id"]; id != "" {
			if ids[id] {
				wrong = append(wrong, "id twice: "+id)
			}
			ids[id] = true
		}
		if by := has["aria-labelledby"]; by != "" {
			links = append(links, strings.Fields(by)...)
		}
		switch n.Data {
		case "a":
			if !strings.HasPrefix(has["href"], "#") {
				wrong = append(wrong, "a link out of the page: "+has["href"])
			}
			links = append(links, strings.TrimPrefix(has["href"], "#"))
		case "th":
			if has["scope"] == "" {
				wrong = append(wrong, "a table head without scope")
			}
		case "svg":
			if has["role"] != "img" || has["aria-labelledby"] == "" {
				wrong = append(wrong, "a picture without words")
			}
		case "h1", "h2", "h3":
			now := int(n.Data[1] - '0')
			if now > level+1 {
				wrong = append(wrong, fmt.Sprintf("h%d after h%d", now, level))
			}
			if level = now; now == 1 {
				firsts++
			}
		}
	}
	for _, id := range links {
		if !ids[id] {
			wrong = append(wrong, "nothing has the id "+id)
		}
	}
	if firsts != 1 {
		wrong = append(wrong, fmt.Sprintf("%d h1", firsts))
	}
	return wrong
}

func TestStructure(t *testing.T) {
	t.Parallel()
	for _, name := range []string{"ferry_terminal", "hotel", "school", "village_hall", "warehouse_us", "first_steps"} {
		for _, w := range structure(written(t, example(t, name))) {
			t.Errorf("%s: %s", name, w)
		}
	}
}

// TestContent looks for what a reviewer asks of a submittal.
func TestContent(t *testing.T) {
	t.Parallel()
	j := example(t, "ferry_terminal")
	page := html.UnescapeString(string(written(t, j)))
	for _, want := range []string{
		"GM-12", "It does not hold: ", "examples/ferry_terminal.pa.hcl", "32 × 6 W + 1 × 4 W", "common practice, no published source",
		"proved: the design was worked out again with it", "measured speech intelligibility", "Local codes", "(100 V)² / 240 W = 41.67 ohm",
		"D 1 … D 18", "Test sheet", "Cable schedule", "limit in force, 10 % or 0.92 dB", "Not asked: ",
	} {
		if !strings.Contains(page, want) {
			t.Errorf("%q is not in the report", want)
		}
	}
	for i, f := range drawing.Findings(j) {
		if !strings.Contains(page, fmt.Sprintf("id=\"finding-%d\"", i+1)) || !strings.Contains(page, f.Message) {
			t.Errorf("finding %d is not in the report: %s", i+1, f.Message)
		}
	}
	if !bytes.Equal(written(t, j), written(t, example(t, "ferry_terminal"))) {
		t.Error("two runs write different reports")
	}
}

func TestAcceptedFindings(t *testing.T) {
	t.Parallel()
	j, ok := judgedText(t, `
amplifier "Rack" { rated_power = "60 W" }
line "Shop" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "S" {
    quantity = 12
    tap      = "6 W"
  }
}
deviation "load-margin" {
  amplifier   = "Rack"
  reason      = "The amplifier is replaced in spring"
  accepted_by = "The owner"
}`)
	if !ok {
		t.Fatal("the design is not understood")
	}
	page := string(written(t, j))
	for _, want := range []string{`id="deviations"`, "The amplifier is replaced in spring", "The owner", "deviations count as not expired"} {
		if !strings.Contains(page, want) {
			t.Errorf("%q is not in the report", want)
		}
	}
}

// hostileDesign puts a name wherever one goes.
func hostileDesign(name string) string {
	return fmt.Sprintf(`system %[1]q {
  reference = %[1]q
  revision  = %[1]q
}
amplifier %[1]q { rated_power = "60 W" }
music %[1]q {
  into  = %[1]q
  input = %[1]q
}
line %[1]q {
  amplifier = %[1]q
  output    = "100 V"
  cable     = "2 x 1.5 mm2"
  home_run  = "20 m"
  loudspeaker %[1]q {
    tap   = "60 W"
    space = %[1]q
  }
  loudspeaker "Two" {
    tap = "6 W"
    leg = "5 m"
  }
}
space %[1]q {}
deviation "load-margin" {
  amplifier   = %[1]q
  reason      = %[1]q
  accepted_by = %[1]q
}
`, strings.ReplaceAll(strings.ReplaceAll(name, "${", "$"), "%{", "%"))
}

var hostileNames = []string{
	`<script>alert(1)</script>`, `"><img src=x onerror=alert(1)>`, `</style><script>1</script>`, `</svg><b onclick=x>`, `--></title><iframe>`,
	`javascript:alert(1)`, `{{.}}`, `&lt;b&gt;`, `'`, "`", "大ホール", "é",
}

func TestNamesAreNoMarkup(t *testing.T) {
	t.Parallel()
	for _, name := range hostileNames {
		j, ok := judgedText(t, hostileDesign(name))
		if !ok {
			t.Errorf("%q is no name", name)
			continue
		}
		page := written(t, j)
		for _, w := range structure(page) {
			t.Errorf("with the name %q: %s", name, w)
		}
		if !strings.Contains(html.UnescapeString(string(page)), name) {
			t.Errorf("the name %q is lost", name)
		}
	}
}

func FuzzNames(f *testing.F) {
	for _, name := range hostileNames {
		f.Add(name)
	}
	f.Fuzz(func(t *testing.T, name string) {
		j, ok := judgedText(t, hostileDesign(name))
		if !ok {
			return
		}
		if wrong := structure(written(t, j)); len(wrong) > 0 {
			t.Errorf("with the name %q: %s", name, wrong[0])
		}
	})
}

// TestContrast demands 4.5 to 1 for every colour of text on every ground (Web
// Content Accessibility Guidelines 2.2, success criterion 1.4.3).
func TestContrast(t *testing.T) {
	t.Parallel()
	for i, scheme := range regexp.MustCompile(`:root\{[^}]*--paper[^}]*\}`).FindAllString(pageStyle, -1) {
		colours := map[string]float64{}
		for _, m := range regexp.MustCompile(`--(\w+):#([0-9a-f]+)`).FindAllStringSubmatch(scheme, -1) {
			colours[m[1]] = luminance(t, m[2])
		}
		for _, ground := range []string{"paper", "fill"} {
			for _, ink := range []string{"ink", "soft", "error", "warning", "note", "link"} {
				high, low := max(colours[ground], colours[ink]), min(colours[ground], colours[ink])
				if ratio := (high + 0.05) / (low + 0.05); ratio < 4.5 {
					t.Errorf("scheme %d: %s on %s has a contrast of %.2f", i, ink, ground, ratio)
				}
			}
		}
		if len(colours) < 8 {
			t.Errorf("scheme %d has only %d colours", i, len(colours))
		}
	}
}

// luminance is relative luminance as WCAG 2.2 defines it.
func luminance(t *testing.T, hex string) float64 {
	t.Helper()
	if len(hex) == 3 {
		hex = string([]byte{hex[0], hex[0], hex[1], hex[1], hex[2], hex[2]})
	}
	var sum float64
	for i, weight := range []float64{0.2126, 0.7152, 0.0722} {
		v, err := strconv.ParseUint(hex[2*i:2*i+2], 16, 8)
		if err != nil {
			t.Fatal(err)
		}
		c := float64(v) / 255
		if c <= 0.04045 {
			c /= 12.92
		} else {
			c = math.Pow((c+0.055)/1.055, 2.4)
		}
		sum += weight * c
	}
	return sum
}

// TestLargeDesign holds the size of the report of 2,000 loudspeakers, each a
// block of its own; BenchmarkLargeDesign tells how long it takes.
func TestLargeDesign(t *testing.T) {
	t.Parallel()
	j, ok := judgedText(t, schematest.DesignText(2000))
	if !ok {
		t.Fatal("the design is not understood")
	}
	page := written(t, j)
	const most = 5_000_000
	if len(page) > most {
		t.Errorf("the report has %d bytes", len(page))
	}
	for _, w := range structure(page) {
		t.Error(w)
	}
}

func BenchmarkLargeDesign(b *testing.B) {
	text := schematest.DesignText(2000)
	for b.Loop() {
		j, _ := judgedText(b, text)
		written(b, j)
	}
}

// TestInABrowser opens the report in Chromium: nothing is said on its console,
// and it prints to a PDF of several pages.
func TestInABrowser(t *testing.T) {
	t.Parallel()
	browser, err := exec.LookPath("chromium")
	if err != nil {
		t.Skip("chromium is not installed; .ci/run installs it")
	}
	if testing.Short() {
		t.Skip("a browser takes seconds to start")
	}
	folder := t.TempDir()
	file := filepath.Join(folder, "report.html")
	if err := os.WriteFile(file, written(t, example(t, "ferry_terminal")), 0o600); err != nil {
		t.Fatal(err)
	}
	run := func(args ...string) (string, string) {
		// A browser that hangs ends the test, not the whole run.
		ctx, stop := context.WithTimeout(t.Context(), 2*time.Minute)
		defer stop()
		all := append([]string{"--headless", "--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage", "--enable-logging=stderr", "--user-data-dir=" + t.TempDir()}, args...)
		command := exec.CommandContext(ctx, browser, append(all, "file://"+file)...)
		var out, said bytes.Buffer
		command.Stdout, command.Stderr = &out, &said
		if err := command.Run(); err != nil {
			t.Fatalf("chromium %v: %v\n%s", args, err, said.String())
		}
		return out.String(), said.String()
	}
	dom, said := run("--dump-dom")
	if strings.Contains(said, "CONSOLE") {
		t.Errorf("the browser says on its console:\n%s", said)
	}
	if wrong := structure([]byte(dom)); len(wrong) > 0 {
		t.Errorf("what the browser made of the page: %v", wrong)
	}
	pdf := filepath.Join(folder, "report.pdf")
	run("--no-pdf-header-footer", "--print-to-pdf="+pdf)
	text, err := os.ReadFile(pdf)
	if err != nil {
		t.Fatal(err)
	}
	pages := len(regexp.MustCompile(`/Type\s*/Page\b`).FindAll(text, -1))
	if !bytes.HasPrefix(text, []byte("%PDF-")) || pages < 10 || pages > 40 {
		t.Errorf("it prints to %d pages", pages)
	}
}
