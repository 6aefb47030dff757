package ui

import (
	"testing"

	"fyne.io/fyne/v2/test"
	"fyne.io/fyne/v2/theme"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestIconsAreInTheInkOfTheLook(t *testing.T) {
	a := test.NewTempApp(t)
	seen := map[string]Look{}
	for look := range palettes {
		th := benchTheme{look}
		a.Settings().SetTheme(th)
		for _, name := range []string{"first", "again"} {
			icon, ok := th.Icon(theme.IconNameDelete).(lookIcon)
			require.True(t, ok)
			assert.Equal(t, string(icon.ThemedResource.Content()), string(icon.Content()), "%s, %s", look, name)
		}
		content := string(th.Icon(theme.IconNameDelete).Content())
		assert.NotContains(t, seen, content, "no two looks have the same ink")
		seen[content] = look
	}
}
