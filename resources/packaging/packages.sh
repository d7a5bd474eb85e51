# SPDX-License-Identifier: GPL-3.0-or-later
# Debian packages of the project, in one place; sourced by app/run, tests/run and tests/shots.
# shellcheck shell=bash disable=SC2034

littoral_build_packages=(g++ cmake ninja-build mold qt6-base-dev libqt6opengl6-dev qt6-charts-dev qt6-svg-dev qt6-l10n-tools libexif-dev
    libgl-dev)
littoral_run_packages=(libqt6sql6-sqlite qt6-translations-l10n fonts-inter fonts-dejavu-core)
littoral_test_packages=(libgtest-dev libgmock-dev libbenchmark-dev libboost-dev libical-dev poppler-utils clang-format-14)

# install_missing PACKAGE...: installs those that are not there, saying which; needs root (or sudo) only then.
install_missing() {
    local missing=() package
    for package in "$@"; do
        dpkg-query -W -f='${Status}' "$package" 2>/dev/null | grep -q 'ok installed' || missing+=("$package")
    done
    ((${#missing[@]})) || return 0
    echo "Installing Debian packages: ${missing[*]}"
    local as_root=()
    [[ $EUID -eq 0 ]] || as_root=(sudo)
    "${as_root[@]}" apt-get update -qq
    DEBIAN_FRONTEND=noninteractive "${as_root[@]}" apt-get install -y -qq --no-install-recommends "${missing[@]}" >/dev/null
}
