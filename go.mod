module stopwright

go 1.25.0

require (
	github.com/stretchr/testify v1.12.1
	golang.org/x/image v0.40.0
)

require (
	github.com/yofu/dxf v0.0.0-20250421012503-acd811fa0dd4
	go.yaml.in/yaml/v3 v3.0.5 // indirect
	golang.org/x/text v0.37.0 // indirect
	pgregory.net/rapid v1.3.0 // indirect
)
