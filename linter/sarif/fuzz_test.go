package sarif_test

import (
	"testing"

	"loudlint/linter/resulttest"
	"loudlint/linter/sarif"
	"loudlint/schema/source"
)

// FuzzWrite puts together results of any texts, places and figures: what is
// written always conforms.
func FuzzWrite(f *testing.F) {
	f.Add("x.pa.hcl", []byte(design), "Rack", "Too much.", "", uint64(1))
	f.Add("Öä/🎭 [1](2)#?.pa.hcl", []byte("\ufeffa\r\nb 🎤\n"), `{0} "x" <b>`, "[a](b) {1}", "/home/me", uint64(2))
	f.Add("/abs/\xff.pa.hcl", []byte("\xff\xfe\x00"), "\x00\x1b[31m\u202e", "\xc3\x28", "/abs", uint64(3))
	f.Add("", []byte{}, "", "", "", uint64(4))
	f.Add("loudlint:typical/x", []byte("\n\n"), "\u2028", "a\nb", "C:/", uint64(5))
	f.Add("C:/x/y.pa.hcl", []byte("x"), "..", "://", "C:", uint64(6))
	f.Add("//net/../x", []byte("x\r"), "%zz", "?", "//", uint64(7))
	f.Add("//", []byte("x"), "", "", "", uint64(8))
	f.Fuzz(func(t *testing.T, file string, text []byte, name, message, folder string, seed uint64) {
		r := resulttest.Any(seed, []string{"", name, message, file, "a", "x.pa.hcl"}, []*source.File{
			source.NewFile(file, text), source.NewFile("other/"+name, []byte(message)),
		})
		tool := sarif.Tool{Name: "loudlint", Version: name, Folder: folder}
		if seed%2 == 0 {
			code := int(seed%300) - 20
			tool.ExitCode = &code
		}
		write(t, r, tool)
	})
}
