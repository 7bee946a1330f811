# What an expression of a criterion cannot hold.

given {
  most = 5
  word = "horn"
}

criterion "In quotes" {
  each   = "line"
  expect = "drop_percent <= 5"
}

criterion "A list" {
  each   = "line"
  expect = drop_percent == [5]
}

criterion "A loop" {
  each   = "line"
  expect = [for x in lines : x][0] == 5
}

criterion "A part of a figure" {
  each   = "line"
  expect = drop.percent <= given.most
}

criterion "No such given" {
  each   = "line"
  expect = drop_percent <= given.least
}

criterion "A function" {
  each   = "line"
  expect = mix(load_w, 5) > 3 && file("x") == "y"
}

criterion "Without arguments" {
  each   = "line"
  expect = max() > 3
}

criterion "Too many" {
  each   = "line"
  expect = abs(load_w, 3) > 3
}

criterion "The rest of a division" {
  each   = "line"
  expect = load_w % 3 == 0
}

criterion "Nothing" {
  each   = "line"
  expect = load_w == null
}

criterion "A template" {
  each   = "line"
  expect = "${load_w}" == 3
}

criterion "A figure in a text" {
  each   = "line"
  expect = class == "a ${name}"
}

criterion "Beyond use" {
  each   = "line"
  expect = load_w < 1e300
}

criterion "Messages" {
  each    = "line"
  expect  = load_w < 5
  message = load_w
}

criterion "More messages" {
  each    = "line"
  expect  = load_w < 5
  message = "%{ for x in load_w }x%{ endfor }"
}

criterion "Too long" {
  each   = "line"
  expect = 1+1+1+1+1+1+1+1+1+1+1+1+1+1+1+1+1+1+1+1+1+1+1+1+1+1+1+1+1+1+1+1+1+1+1+1+1+1+1+1+1+1+1+1+1+1+1+1+1+1+1+1 > 3
}
