#compdef toiletaid
# In ~/.zshrc, after compinit: eval "$(toiletaid completion zsh)"
_toiletaid() {
    local line="${(j: :)words[1,CURRENT]}"
    local -a found
    found=("${(@f)$("${words[1]}" "[suggest:${#line}]" "$line" 2>/dev/null)}")
    if [[ -n "$found" ]]; then
        compadd -Q -a found
    else
        _files
    fi
}
compdef _toiletaid toiletaid
