package router

import (
	"io"
	"slices"

	"stopwright/assets/words"
	"stopwright/detent/plan"
	"stopwright/export/drawing"
)

// Card is one line of the card that goes with the programs of a plan.
type Card struct {
	Program
	File string // the name of the program's file
}

// WriteCard writes the card of a plan's programs: which file cuts which part,
// with which tools, and how long it takes. It is itself a program, of comments
// and an end alone: one program cuts one part, so a file for all parts that
// moved a machine would be a trap. The only errors are those of to.
func WriteCard(to io.Writer, p plan.Plan, cards []Card, info drawing.Info) error {
	c := newCode(p.RouterSettings())
	w := inUnit(info.Words, c.unit)
	c.block("%")
	c.comment(w.Text("router.card.name"))
	c.comment(drawing.Title(p, w, ""))
	if info.Date != "" {
		c.comment(w.Text("sheet.date", words.Args{"Date": info.Date}))
	}
	if len(cards) == 0 {
		c.comment(w.Text("router.card.nothing"))
	}
	for _, card := range cards {
		c.comment(w.Text("router.card.file", words.Args{
			"File": card.File, "Part": drawing.PartName(w, card.Part),
			"N": card.Holes(), "Time": Clock(w, card.Seconds),
		}))
		c.tools(card.Program, w)
	}
	for _, part := range drawing.AllPartsOf(p) {
		if !slices.ContainsFunc(cards, func(c Card) bool { return c.Part == part }) {
			c.comment(w.Text("router.card.part", words.Args{"Part": drawing.PartName(w, part)}))
		}
	}
	for _, key := range cautions {
		c.comment(w.Text(key))
	}
	c.block("M2")
	c.block("%")
	_, err := to.Write(c.out.Bytes())
	return err
}
