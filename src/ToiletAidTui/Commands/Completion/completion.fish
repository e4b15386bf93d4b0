# In ~/.config/fish/completions/toiletaid.fish: toiletaid completion fish | source
function __toiletaid
    set -l line (commandline -cp)
    set -l program (commandline -po)[1]
    set -l found ($program "[suggest:"(string length -- "$line")"]" "$line" 2>/dev/null)
    if test (count $found) -gt 0
        printf '%s\n' $found
    else
        __fish_complete_path (commandline -ct)
    end
end
complete -c toiletaid -f -a '(__toiletaid)'
