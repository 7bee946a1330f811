# A field report: a warehouse counted ten watts for each loudspeaker and put eight
# of them on an 80 W amplifier. They are too quiet, and the advice was a higher tap
# or a larger amplifier. A higher tap alone overloads this one at once. Names are
# invented.
amplifier "Store" {
  rated_power = "80 W" # expect load-margin fail warning: nothing in hand && share of the rating 100 % && load with every tap one step of 3 dB up 160 W
}
line "Aisles" {
  amplifier = "Store"
  output    = "100 V"
  loudspeaker "W" {
    quantity = 8
    tap      = "10 W"
  }
}
