# Two players on one input; another one like it is free.
amplifier "Rack" {
  model = "typical/mixer-amp-120"
}
music "Player" {
  into  = "Rack"
  input = "Aux 1"
}
music "Tuner" {
  into  = "Rack"
  input = "Aux 1" # expect fail error: Player and Tuner go into Aux 1 of Rack: one input takes one plug. && Plug Tuner into Aux 2 of Rack
}
