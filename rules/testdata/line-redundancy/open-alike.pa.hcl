# Sixteen rooms with two loudspeakers each: in walking order the first eight are on
# one line, but it may be meant otherwise. One loudspeaker says no space.
system "Mill" { duty = "emergency" } # expect open: missing space that a loudspeaker serves of loudspeaker "Porch": space = "Hall"
amplifier "Rack A" { rated_power = "240 W" }
amplifier "Rack B" { rated_power = "240 W" }
space "Classroom" { # expect open: shared out in walking order, some hang on one && missing which of the equal spaces each line serves of space "Classroom"
  alike  = 16
  height = "3 m"
}
line "A" {
  amplifier = "Rack A"
  output    = "100 V"
  loudspeaker "A" {
    quantity = 16
    tap      = "6 W"
    space    = "Classroom"
  }
}
line "B" {
  amplifier = "Rack B"
  output    = "100 V"
  loudspeaker "B" {
    quantity = 16
    tap      = "6 W"
    space    = "Classroom"
  }
}
line "Porch" {
  amplifier = "Rack A"
  output    = "100 V"
  loudspeaker "Porch" { tap = "6 W" }
}
