# Syntax slips, wrong values, wrong names: all are said in one run.
system "Hall" {
  mains = 230V
  dutty = "music"
}
amplifier "Rack" {
  rated_power = "240 V"
  output "Zone 1" { volts = "100 V", switched = yes }
}
line "North" {
  amplifier = "Rak"
  output    = "Zone 1"
  home_run  = “40 m”
  loudspeaker "N" {
    quantity = "8"
    tap      = "6 Watts"
    spaec    = "Hall"
    space    = "Hal"
  }
space "Hall" {
  height = "8""
}
