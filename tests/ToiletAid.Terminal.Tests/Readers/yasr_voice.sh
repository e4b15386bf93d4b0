#!/bin/bash
# Stands in for the speech server of yasr: writes down every utterance, one a line, in place of speaking it.
while IFS= read -r line; do
    case "$line" in
        "q {"*) text=${line#q \{}; printf '%s\n' "${text%\}}" >> "$VOICE_LOG" ;;
    esac
done
