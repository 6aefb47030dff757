module stopwright

go 1.25.0

require golang.org/x/image v0.40.0

require golang.org/x/text v0.37.0 // indirect
