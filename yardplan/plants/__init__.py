"""What is known of plants: crops, cultivars, rootstocks, growth, pollen and bloom, with sources."""
