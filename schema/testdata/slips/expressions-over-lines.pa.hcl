# A condition in brackets may stand on several lines, whatever else is wrong.

criterion "Sound" {
  each   = "line"
  expect = (drop_percent <= 5 &&
    load_w < "60 W") || loudspeakers > 3
  when   = (
    constant_voltage
  )
}

criterion "Not closed" {
  each   = "line"
  expect = (drop_percent <= 5 &&
    load_w < "60 W"
}

criterion "Wrong inside" {
  each   = "line"
  expect = (drop_percent <= 5 and
    load_w < 60)
}

line "North" {
  home_run = 40 m
}
