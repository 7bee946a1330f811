package sarif

import (
	"path"
	"slices"
	"strings"

	"loudlint/linter"
	"loudlint/linter/internal/jsonstream"
	"loudlint/schema"
	"loudlint/schema/source"
	"loudlint/schema/wording"
)

// Ids of notifications.
const (
	notRead       = "design-not-read"
	notUnderstood = "design-not-understood"
)

func notificationDescriptors() []reportingDescriptor {
	return []reportingDescriptor{
		{
			ID:               notRead,
			ShortDescription: &message{Text: "Files of the design could not be read, so nothing was judged."},
			FullDescription:  &message{Text: "A design is a file or a folder of files. One that is missing, too large or not readable keeps the whole design from being judged."},
			Help:             &message{Text: "Look at the path and at who may read it."},
		},
		{
			ID:               notUnderstood,
			ShortDescription: &message{Text: "The text is no design, so nothing was judged."},
			FullDescription:  &message{Text: "Every problem in the text of a design is told with its place and with what is expected there. Checks are asked only of a design without any."},
			Help:             &message{Text: "Put right what each message names and run the program again."},
		},
	}
}

// writeRun writes what belongs to one design, except for the tool.
func writeRun(out *jsonstream.Writer, j *linter.Judged, rules *rules, t Tool) {
	p := newPlaces(j.Name, filesOf(j), t.Folder)
	out.Member("automationDetails", automationDetails{ID: runID(t.Name, p)})
	out.Member("invocations", []invocation{invocationOf(j, rules, p, t)})
	out.Member("language", language)
	out.Member("columnKind", "utf16CodeUnits")
	out.Member("defaultEncoding", "UTF-8")
	out.Member("defaultSourceLanguage", "hcl")
	out.List("results")
	for i := range j.Outcomes {
		out.Item()
		out.Value(resultOf(&j.Outcomes[i], j, rules, p))
	}
	if j.Before != nil {
		for i := range j.Before.Gone {
			if g := &j.Before.Gone[i]; g.Now == 0 { // any other has its result above
				out.Item()
				out.Value(absentOf(g, j, rules, p))
			}
		}
	}
	out.Close("]")
	if len(p.used) > 0 {
		out.Member("originalUriBaseIds", p.used)
	}
	if len(p.artifacts) > 0 {
		out.Member("artifacts", p.artifacts)
	}
}

// filesOf lists the files of a design, or those in which problems were found.
func filesOf(j *linter.Judged) []*source.File {
	if j.Design != nil && j.Held != nil {
		return slices.Concat(j.Design.Files, j.Held.Files)
	}
	if j.Design != nil {
		return j.Design.Files
	}
	var files []*source.File
	for _, p := range j.Problems {
		if !p.Span.IsZero() {
			files = append(files, p.Span.File) // the same one again adds nothing
		}
	}
	return files
}

// runID names the run as services tell series of runs apart: by everything up
// to the last slash (3.17.3).
func runID(toolName string, p *places) string {
	name := p.design
	for _, f := range p.folders {
		if rest, below := strings.CutPrefix(name, f.path+"/"); below {
			name = rest
			break
		}
	}
	if isAbsolute(name) {
		name = path.Base(name) // where it lies is nobody's business
	}
	return toolName + "/" + name + "/"
}

func invocationOf(j *linter.Judged, rules *rules, p *places, t Tool) invocation {
	i := invocation{ExecutionSuccessful: j.Understood(), ExitCode: t.ExitCode, RuleConfigurationOverrides: rules.overrides(j)}
	if j.Err != nil {
		first := 0
		i.ToolExecutionNotifications = append(i.ToolExecutionNotifications, notification{
			Descriptor: reportingDescriptorReference{ID: notRead, Index: &first},
			Level:      "error",
			Message:    message{Text: escaped(wording.Sentence(j.Err.Error()))},
		})
	}
	for k := range j.Problems {
		i.ToolExecutionNotifications = append(i.ToolExecutionNotifications, notificationOf(&j.Problems[k], p))
	}
	return i
}

func notificationOf(problem *schema.Problem, p *places) notification {
	second := 1
	places := append([]schema.Place{{Span: problem.Span}}, problem.Related...)
	return notification{
		Descriptor: reportingDescriptorReference{ID: notUnderstood, Index: &second},
		Level:      "error",
		Message:    message{Text: escaped(wording.Sentence(problem.String()))},
		Locations:  p.noted(places, 1),
		Properties: &notificationProperties{Found: problem.Found, Expected: problem.Expected, Nearest: problem.Nearest},
	}
}
