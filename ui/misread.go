package ui

import (
	"errors"

	"stopwright/assets/words"
	"stopwright/detent/measure"
)

// kindKeys end the keys of what a text was meant to be.
var kindKeys = map[measure.Kind]string{measure.Length: "length", measure.Angle: "angle", measure.Number: "number", measure.Force: "force", measure.Rate: "rate"}

// inWords puts an error into the window's language.
func (w *Window) inWords(err error) string {
	var misread *measure.SyntaxError
	if !errors.As(err, &misread) {
		return w.words.Told(err)
	}
	kind := kindKeys[misread.Kind]
	args := words.Args{"Text": misread.Shown(), "Why": w.words.Text(reasonKeys[misread.Reason])}
	switch misread.Reason {
	case measure.Empty:
		return w.words.Text("misread.empty."+kind, args)
	case measure.NotUnderstood:
		return w.words.Text("misread."+kind, args)
	case measure.UnknownUnit:
		args["Why"] = w.words.Text("misread.unit")
	}
	return w.words.Text("misread."+kind, args) + " (" + args["Why"].(string) + ")"
}
