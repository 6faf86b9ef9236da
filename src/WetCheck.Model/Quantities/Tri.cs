namespace WetCheck.Model;

/// <summary>Answer of a test. In this order, so that all-of is the least and any-of the greatest.</summary>
public enum Tri { No, Unknown, Yes }
