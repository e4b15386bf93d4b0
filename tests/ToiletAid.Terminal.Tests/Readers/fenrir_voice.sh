#!/bin/bash
# Stands in for the speech command of Fenrir, which calls it once for each utterance: writes it down on one line.
printf '%s\n' "$(tr '\n' ' ' <<< "$*")" >> "$VOICE_LOG"
