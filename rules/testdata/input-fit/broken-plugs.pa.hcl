# Plugs that do not go in.
amplifier "Rack" {
  input "Aux" {
    takes      = "line"
    connectors = ["RCA pair"]
  }
  input "Mic" {
    takes      = "microphone"
    connectors = ["DIN 5", "XLR 3"]
  }
  input "Old" {
    takes      = "microphone"
    connectors = ["DIN 3"]
  }
}
music "Player" {
  into      = "Rack"
  input     = "Aux"
  connector = "3.5 mm jack 3-pole" # expect fail warning: Player has a 3.5 mm jack 3-pole plug, and Aux of Rack takes RCA pair. && Order an adapter, or the lead with an RCA pair plug.
}
microphone "Desk" {
  into      = "Rack"
  input     = "Mic"
  connector = "XLR 5" # expect fail warning: Desk has an XLR 5 plug, and Mic of Rack takes DIN 5 and XLR 3.
}
microphone "Second desk" {
  into      = "Rack"
  input     = "Old"
  connector = "DIN 5" # expect fail warning: Second desk has a DIN 5 plug, and Old of Rack takes DIN 3.
}
