# What the parser refuses where an expression stands.

criterion "Words" {
  each   = "line"
  expect = drop_percent <= 5 and not (load_w > 3 or class == "this and that")
}

criterion "Signs" {
  each   = "line"
  expect = load_w =< 3 && drop_percent ≤ 5
}

criterion "One equals" {
  each   = "line"
  expect = load_w = 3
}

criterion "Units" {
  each   = "line"
  expect = load_w <= 6 W && drop_percent < 5 %
}

criterion "Open" {
  each   = "line"
  when   = (load_w <= 6
  expect = load_w <
}
