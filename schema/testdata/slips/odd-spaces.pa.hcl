# Copied from a web page.
line "North" {
  home_run = "40 m"
  ca​ble = "16/2"
}
