# Exactly the highest load passes.
amplifier "Rack" {
  rated_power = "240 W"
  output "Zone" {
    quantity     = 2
    volts        = "100 V"
    highest_load = "60 W" # expect pass: may carry 60 W and its loudspeakers take 60 W
  }
}
line "Shop" {
  amplifier = "Rack"
  output    = "Zone 1"
  loudspeaker "S" {
    quantity = 6
    tap      = "10 W"
  }
}
