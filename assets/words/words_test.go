package words_test

import (
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/assets/words"
)

// expected fills the gaps of a text of the English catalogue, given as pairs of
// name and value, by plain replacement: a text may be reworded, its gaps not.
func expected(key string, pairs ...string) string {
	text := words.English().Text(key)
	for k := 0; k < len(pairs); k += 2 {
		text = strings.ReplaceAll(text, "{{."+pairs[k]+"}}", pairs[k+1])
	}
	return text
}

func TestText(t *testing.T) {
	c := words.English()
	for _, k := range []struct {
		why, key string
		args     []words.Args
		want     string
	}{
		{"a text without a gap", "part.base", nil, "Base"},
		{
			"lengths and angles in the catalogue's units", "check.web-thin.seat",
			[]words.Args{{
				"A": "A1", "AngleA": words.Deg(-12.5), "B": "B2", "AngleB": words.Deg(360.0 / 7),
				"Left": words.MM(1.006), "Limit": words.MM(2),
			}},
			expected("check.web-thin.seat", "A", "A1", "AngleA", "-12.5°", "B", "B2", "AngleB", "51.429°", "Left", "1.01 mm", "Limit", "2 mm"),
		},
		{"whole numbers", "feature.hole", []words.Args{{"N": 7}}, expected("feature.hole", "N", "7")},
		{
			"a list of angles", "check.stop-outside-travel.several",
			[]words.Args{{
				"Angles": []words.Deg{180, -180}, "From": words.Deg(-90), "To": words.Deg(90),
			}},
			expected("check.stop-outside-travel.several", "Angles", "180°, -180°", "From", "-90°", "To", "90°"),
		},
		{"what rounds to 0 has no sign", "fix.ring", []words.Args{{"Radius": words.MM(-0.004)}}, expected("fix.ring", "Radius", "0 mm")},
		{"what is filled in is not read again", "feature.hole", []words.Args{{"N": "{{.N}}"}}, expected("feature.hole")},
		{"any other value as Go writes it", "feature.hole", []words.Args{{"N": true}}, expected("feature.hole", "N", "true")},
		{"a key there is not shows itself", "no.such.key", nil, "[no.such.key]"},
	} {
		t.Run(k.why, func(t *testing.T) { assert.Equal(t, k.want, c.Text(k.key, k.args...)) })
	}
}

func TestUnitsAreTheCallersToChoose(t *testing.T) {
	three := words.Args{"Radius": words.MM(3)}
	c := words.English()
	c.Length = func(mm float64) string { return strings.Repeat("|", int(mm)) }
	assert.Equal(t, expected("fix.ring", "Radius", "|||"), c.Text("fix.ring", three))
	assert.Equal(t, expected("fix.ring", "Radius", "3 mm"), words.English().Text("fix.ring", three), "one catalogue is not another's")
}

func TestLanguages(t *testing.T) {
	assert.Equal(t, []string{"de", "en"}, words.Languages())
	for _, l := range words.Languages() {
		c, err := words.In(l)
		require.NoError(t, err)
		assert.Equal(t, l, c.Language)
		assert.ElementsMatch(t, words.English().Keys(), c.Keys(), "every language says everything")
	}
	_, err := words.In("xx")
	assert.EqualError(t, err, `no language "xx"; there are de, en`)
}

var gap = regexp.MustCompile(`{{\.(\w+)}}`)

// TestGapsAreWellFormed: nothing of a gap's braces is left once the gaps are
// taken out, and no text is blank.
func TestGapsAreWellFormed(t *testing.T) {
	c := words.English()
	for _, key := range c.Keys() {
		require.True(t, c.Has(key))
		text := gap.ReplaceAllString(c.Text(key), "")
		assert.NotContains(t, text, "{", key)
		assert.NotContains(t, text, "}", key)
		assert.NotEmpty(t, strings.TrimSpace(c.Text(key)), key)
	}
	assert.False(t, c.Has("no.such.key"))
}

// gaps are the places of a text that are filled in.
var gaps = regexp.MustCompile(`\{\{\.\w+\}\}`)

// Every language says everything, and fills in the same values.
func TestLanguagesSayTheSame(t *testing.T) {
	english := words.English()
	require.Contains(t, words.Languages(), "de")
	for _, language := range words.Languages() {
		c, err := words.In(language)
		require.NoError(t, err)
		assert.Equal(t, english.Keys(), c.Keys(), "%s: keys missing or left over", language)
		for _, key := range english.Keys() {
			want, got := gaps.FindAllString(english.Text(key), -1), gaps.FindAllString(c.Text(key), -1)
			slices.Sort(want)
			slices.Sort(got)
			assert.Equal(t, slices.Compact(want), slices.Compact(got), "%s %s", language, key)
		}
	}
}
