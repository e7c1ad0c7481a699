"""Orientation statistics: means, fold axes, domains, nets and roses."""
