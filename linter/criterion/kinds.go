package criterion

import (
	"slices"
	"strings"

	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/schema"
	"loudlint/schema/wording"
)

// kind is one kind of part that a criterion can be asked of.
type kind[T any] struct {
	each    string // as it is written in a criterion
	doc     string
	figures []figure[T]
	subject func(s *analysis.System, part T) check.Subject
	ask     func(judge func(*check.Report, T)) check.Judge
}

// KindDescription is a kind of part with its figures.
type KindDescription struct {
	Each    string
	Doc     string // what one of them is, as a sentence
	Figures []Description
}

// asker is a kind without its type.
type asker interface {
	describe() KindDescription
	check(c *schema.Criterion) (*check.Check, []schema.Problem)
}

func (k kind[T]) describe() KindDescription {
	d := KindDescription{Each: k.each, Doc: k.doc}
	for _, f := range k.figures {
		d.Figures = append(d.Figures, f.Description)
	}
	return d
}

// Kinds describes every kind of part that a criterion can be asked of, with its
// figures.
func Kinds() []KindDescription {
	var all []KindDescription
	for _, k := range askers() {
		all = append(all, k.describe())
	}
	return all
}

func askers() []asker {
	return []asker{
		kind[*analysis.Amplifier]{
			"amplifier", "An amplifier with all that hangs on it.", withJob(amplifierFigures()),
			func(_ *analysis.System, a *analysis.Amplifier) check.Subject { return check.AmplifierSubject(a) }, check.EachAmplifier,
		},
		kind[*analysis.Channel]{
			"channel", "A power channel of an amplifier; an amplifier that states one rated power has one.", withJob(channelFigures()),
			func(_ *analysis.System, c *analysis.Channel) check.Subject { return check.ChannelSubject(c) }, check.EachChannel,
		},
		kind[*analysis.Output]{
			"output", "A loudspeaker output of an amplifier that is stated or used.", withJob(outputFigures()),
			func(_ *analysis.System, o *analysis.Output) check.Subject { return check.OutputSubject(o) }, check.EachOutput,
		},
		kind[*analysis.Line]{
			"line", "A line: one loudspeaker circuit.", withJob(lineFigures()),
			func(_ *analysis.System, l *analysis.Line) check.Subject { return check.LineSubject(l) }, check.EachLine,
		},
		kind[*analysis.Run]{
			"loudspeaker", "A loudspeaker block: one loudspeaker, or a run of equal ones, which is asked once.", withJob(loudspeakerFigures()),
			func(_ *analysis.System, r *analysis.Run) check.Subject { return check.RunSubject(r) }, check.EachRun,
		},
		kind[*analysis.Attenuator]{
			"attenuator", "An attenuator block.", withJob(attenuatorFigures()),
			func(_ *analysis.System, a *analysis.Attenuator) check.Subject { return check.AttenuatorSubject(a) }, check.EachAttenuator,
		},
		kind[*analysis.Source]{
			"source", "A microphone, music, a message or a telephone.", withJob(sourceFigures()),
			func(_ *analysis.System, s *analysis.Source) check.Subject { return check.SourceSubject(s) }, check.EachSource,
		},
		kind[*schema.Space]{
			"space", "A space where people listen.", withJob(spaceFigures()),
			func(_ *analysis.System, s *schema.Space) check.Subject { return check.SpaceSubject(s) }, check.EachSpace,
		},
		kind[*analysis.Supply]{
			"supply", "Mains or standby power.", withJob(supplyFigures()),
			func(_ *analysis.System, s *analysis.Supply) check.Subject { return check.SupplySubject(s) }, check.EachSupply,
		},
		kind[*analysis.System]{
			"system", "The job as a whole.", withJob(systemFigures()),
			func(s *analysis.System, _ *analysis.System) check.Subject { return check.JobSubject(s) }, check.EachJob,
		},
	}
}

// withJob adds the figures of the job that every part has too, so that a
// criterion can be for emergency systems alone.
func withJob[T any](figures []figure[T]) []figure[T] {
	duty := lack{"duty of the system", `system "…" { duty = "announcements and music" }`}
	rules := lack{"wiring rules", `system "…" { wiring_rules = "Europe" }`}
	ofJob := func(name, doc string, says []string, lacks lack, of func(*schema.System) schema.Value[string]) figure[T] {
		return figure[T]{Description{Name: name, Doc: doc, Kind: Word, Says: says}, func(s *analysis.System, _ T) reading {
			v := of(s.Design.System)
			if !v.Set() {
				return reading{value: value{missing: []analysis.Missing{{What: lacks.what, Where: s.Design.System.Header, Write: lacks.write}}}}
			}
			r := worded(name, v.V)
			r.evidence.From = []schema.Place{{Span: v.Span, Note: name}}
			return r
		}}
	}
	return append(figures,
		ofJob("duty", "what the system is for", schema.WordsOf("system", "duty"), duty, func(s *schema.System) schema.Value[string] { return s.Duty }),
		fact[T]("emergency", "whether the duty includes emergency announcements", func(s *analysis.System, _ T) (bool, []analysis.Missing) {
			if !s.Design.System.Duty.Set() {
				return false, []analysis.Missing{{What: duty.what, Where: s.Design.System.Header, Write: duty.write}}
			}
			return s.Design.System.Emergency(), nil
		}),
		ofJob("wiring_rules", "whose wiring rules apply", schema.WordsOf("system", "wiring_rules"), rules, func(s *schema.System) schema.Value[string] { return s.WiringRules }),
	)
}

// title names a part at the beginning of a sentence: Loudspeaker "H" of line
// "North".
func title(s check.Subject) string {
	if len(s.Path) == 0 {
		return "The job"
	}
	var texts []string
	for _, step := range slices.Backward(s.Path) {
		texts = append(texts, strings.ReplaceAll(step.Kind, "_", " ")+` "`+step.Name+`"`)
	}
	return wording.Capital(strings.Join(texts, " of "))
}
