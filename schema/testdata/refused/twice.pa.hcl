system "One" {}
system "Two" {}
safety {}
safety {}
given { bay = 5 }
given { bay = 6 }
criteria {
  limit "load-margin" { reserve = "10 %" }
  limit "load-margin" { reserve = "20 %" }
}
amplifier "Rack" {
  output "Zone" { quantity = 3 }
  output "Zone 2" {}
  channel "Main" {}
  channel "main" {}
}
