package dxf

import (
	"strconv"

	"github.com/yofu/dxf/format"
)

// records collects the file: pairs of lines, a group code and its value. It
// writes numbers as short as they are and never as -0, which the library's own
// formatter does not. Of the embedded one only the methods that no section
// calls are left.
type records struct {
	format.Formatter
	out []byte
}

func newRecords(size int) *records {
	return &records{Formatter: format.NewASCII(), out: make([]byte, 0, size)}
}

func (r *records) code(code int) {
	r.out = strconv.AppendInt(r.out, int64(code), 10)
	r.out = append(r.out, '\n')
}

// WriteString adds a text. It must hold no line break: see [label].
func (r *records) WriteString(code int, v string) {
	r.code(code)
	r.out = append(r.out, v...)
	r.out = append(r.out, '\n')
}

// WriteInt adds a whole number.
func (r *records) WriteInt(code, v int) {
	r.code(code)
	r.out = strconv.AppendInt(r.out, int64(v), 10)
	r.out = append(r.out, '\n')
}

// WriteHex adds a handle, in capital hexadecimal digits.
func (r *records) WriteHex(code, v int) {
	r.code(code)
	start := len(r.out)
	r.out = strconv.AppendInt(r.out, int64(v), 16)
	for i := start; i < len(r.out); i++ {
		if c := r.out[i]; c >= 'a' {
			r.out[i] = c - 'a' + 'A'
		}
	}
	r.out = append(r.out, '\n')
}

// WriteFloat adds a number rounded to 1e-9, with at least one decimal.
func (r *records) WriteFloat(code int, v float64) {
	r.code(code)
	r.out = appendNumber(r.out, v)
	r.out = append(r.out, '\n')
}

// decimals of every number: see [grain].
const decimals = 9

// appendNumber appends v rounded to 1e-9 without trailing zeros. The rounding
// is of the decimal digits, so that 0.1 stays 0.1 at any size.
func appendNumber(b []byte, v float64) []byte {
	start := len(b)
	b = strconv.AppendFloat(b, v, 'f', decimals, 64)
	for b[len(b)-1] == '0' && b[len(b)-2] != '.' {
		b = b[:len(b)-1]
	}
	if string(b[start:]) == "-0.0" {
		b = append(b[:start], "0.0"...)
	}
	return b
}
