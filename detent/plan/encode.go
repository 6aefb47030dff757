package plan

import (
	"bytes"
	"fmt"
	"io"

	"stopwright/assets/words"
)

// Encode writes p as a plan file: JSON in UTF-8, the keys always in the same
// order, numbers with as many digits as it takes to read them back the same,
// never -0. What a plan may lack and does lack is left out; so is the size that
// does not belong to the base's shape or a feature's kind. Equal plans give
// equal files.
//
// A plan that [Validate] refuses gives its [Problems], one whose texts need
// more than 16 MB gives [ErrTooMuch]; in both cases nothing is written. Errors
// of w are wrapped.
func Encode(w io.Writer, p Plan) error {
	if err := Validate(p); err != nil {
		return err
	}
	file := written(p)
	if len(file) > MaxFileBytes {
		return because(ErrTooMuch, "plan.toomuch.write", words.Args{"Most": MaxFileBytes >> 20})
	}
	if _, err := w.Write(file); err != nil {
		return fmt.Errorf("the plan cannot be written: %w", err)
	}
	return nil
}

// Equal reports whether a and b are the same plan: whether they would be
// written as the same file.
func Equal(a, b Plan) bool { return bytes.Equal(written(a), written(b)) }

// written returns the file of p.
func written(p Plan) []byte {
	d := newDocument(p)
	w := newWriter()
	visit(w, &d)
	return w.finish()
}
