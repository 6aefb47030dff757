package words

import "errors"

// Saying is something that can be said in any language: it is put into words
// where it is known who reads them.
type Saying interface {
	In(c *Catalogue) string
}

// Phrase is a text of the catalogue with its arguments.
type Phrase struct {
	Key  string
	Args Args
}

// In says the phrase.
func (p Phrase) In(c *Catalogue) string { return c.Text(p.Key, p.Args) }

// Verbatim is said as it stands in every language: a name, or what a file says.
type Verbatim string

// In returns the text.
func (v Verbatim) In(*Catalogue) string { return string(v) }

// Error is an error that can be said in any language, and is one in English to
// whoever does not ask.
type Error struct {
	Saying
	Cause error // what it unwraps to; nil: nothing
}

func (e *Error) Error() string { return e.In(English()) }

// Unwrap returns the cause.
func (e *Error) Unwrap() error { return e.Cause }

// Told returns what an error says. One that is no [Saying], and wraps none,
// speaks for itself.
func (c *Catalogue) Told(err error) string {
	var s Saying
	if errors.As(err, &s) {
		return s.In(c)
	}
	return err.Error()
}
