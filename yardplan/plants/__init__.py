"""What is known of plants: crops, cultivars, rootstocks, growth, pollen and bloom, each value with its source."""
