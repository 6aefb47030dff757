package ui

import (
	"strings"

	"stopwright/detent/stock"
	"stopwright/ui/units"
)

func (w *Window) screwStock() []stockItem {
	t := w.words.Text
	var out []stockItem
	for _, c := range stock.Clearances() {
		length := func(mm float64) string { return w.decimal(units.Style{}.Length(mm)) }
		out = append(out, stockItem{
			kind: screwStock, name: c.Thread, says: t("sizes.medium") + " " + length(c.Medium), mm: c.Medium,
			facts: []stockFact{
				{t("sizes.fine"), length(c.Fine), c.Evidence},
				{t("sizes.medium"), length(c.Medium), c.Evidence},
				{t("sizes.coarse"), length(c.Coarse), c.Evidence},
			},
			uses: holes(c.Medium, "collar.screws.diameter", selectedHole),
		})
	}
	for _, s := range stock.WoodScrews() {
		out = append(out, stockItem{
			kind: screwStock, name: t("stock.woodscrew") + " " + s.Designation(), says: w.span(s.Shank, 1, 2, "mm"),
			sold: s.Designation(), mm: s.Shank.Typical,
			facts: []stockFact{
				{t("stock.shank"), w.span(s.Shank, 1, 2, "mm"), s.Shank.Evidence},
				{t("stock.lead.soft"), w.span(s.LeadSoft, 1, 2, "mm"), s.LeadSoft.Evidence},
				{t("stock.lead.hard"), w.span(s.LeadHard, 1, 2, "mm"), s.LeadHard.Evidence},
			},
			uses: holes(s.Shank.Typical, "collar.screws.diameter", selectedHole),
		})
	}
	return out
}

func (w *Window) pointStock() []stockItem {
	t := w.words.Text
	var out []stockItem
	for _, list := range []struct {
		kind, field string
		points      []stock.Point
	}{
		{pointStock, "seat.drill_point", stock.DrillPoints()},
		{coneStock, "seat.countersink_angle", stock.Countersinks()},
	} {
		for _, p := range list.points {
			angle := w.figure(p.Angle, "") + "°"
			out = append(out, stockItem{
				kind: list.kind, name: t("stock.point." + p.ID), says: angle,
				facts: []stockFact{{t("stock.angle"), angle, p.Evidence}},
				uses:  []stockUse{{field: list.field, number: p.Angle}},
			})
		}
	}
	return out
}

func (w *Window) materialStock() []stockItem {
	t := w.words.Text
	var out []stockItem
	for _, m := range stock.Materials() {
		item := stockItem{kind: woodStock, name: t(m.WordKey()), says: w.span(m.Hardness, 1, 0, "N")}
		for _, v := range []struct {
			key      string
			value    stock.Value
			factor   float64
			decimals int
			unit     string
		}{
			{"stock.hardness", m.Hardness, 1, 0, "N"},
			{"stock.gravity", m.Gravity, 1, 2, ""},
			{"stock.compression", m.Compression, 1, 0, "kPa"},
			{"stock.radial", m.Radial, 100, 3, "%"},
			{"stock.tangential", m.Tangential, 100, 3, "%"},
			{"stock.perhumidity", m.PerHumidity, 100, 4, "%"},
			{"stock.perkelvin", m.PerKelvin, 1, 0, "µm/m"},
		} {
			if v.value.Known() {
				item.facts = append(item.facts, stockFact{t(v.key), w.span(v.value, v.factor, v.decimals, v.unit), v.value.Evidence})
			}
		}
		for _, part := range [3]string{"turntable", "base", "collar"} {
			item.uses = append(item.uses, stockUse{field: part + ".material", text: m.ID})
		}
		out = append(out, item)
	}
	return out
}

func (w *Window) frictionStock() []stockItem {
	t := w.words.Text
	var out []stockItem
	for _, f := range stock.Frictions() {
		item := stockItem{
			kind: rubbedStock,
			name: t("stock.rub."+f.A) + " – " + t("stock.rub."+f.B) + ", " + t("stock.surface."+f.Surface.String()),
		}
		var says []string
		for _, v := range []struct {
			key   string
			value stock.Value
		}{{"stock.static", f.Static}, {"stock.sliding", f.Sliding}} {
			if !v.value.Known() {
				continue
			}
			text := w.span(v.value, 1, 2, "")
			item.facts = append(item.facts, stockFact{t(v.key), text, v.value.Evidence})
			says = append(says, text)
			item.uses = []stockUse{ // sliding if it is known: that is what the ball and the table do
				{field: "shop.friction", number: v.value.Typical}, {field: "shop.table_friction", number: v.value.Typical},
			}
		}
		item.says = strings.Join(says, "; ")
		out = append(out, item)
	}
	return out
}

func (w *Window) wireStock() []stockItem {
	var out []stockItem
	for _, wire := range stock.Wires() {
		text := w.span(wire.Modulus, 1, 0, "MPa")
		out = append(out, stockItem{
			kind: wireStock, name: w.words.Text(wire.WordKey()), says: text,
			facts: []stockFact{{w.words.Text("stock.modulus"), text, wire.Modulus.Evidence}},
		})
	}
	return out
}
