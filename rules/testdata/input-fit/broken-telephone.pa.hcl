# A telephone in a microphone input.
amplifier "Rack" {
  input "Mic" {
    takes   = "microphone"
    setting = "mic"
  }
}
telephone "Page port" {
  into  = "Rack"
  input = "Mic" # expect fail warning: Page port gives the level of a telephone, and Mic of Rack is set for a microphone: it will distort.
}
