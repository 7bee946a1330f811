# Completion of loudlint for fish. To use it:
#
#   loudlint completion fish | source
#
# or write its output to ~/.config/fish/completions/loudlint.fish.

function __loudlint_typed
    set -l typed (commandline -opc) (commandline -ct)
    loudlint completion --typed -- $typed[2..] 2>/dev/null
end

complete -c loudlint -f -a '(__loudlint_typed | tail -n +2)'
complete -c loudlint -n 'test (__loudlint_typed | head -n 1) = files' -F
