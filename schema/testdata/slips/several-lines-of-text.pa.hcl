line "North" {
  containment = <<END
steel pipe
END
  home_run = 40 m
}
