using Microsoft.EntityFrameworkCore.Storage.ValueConversion;

namespace Stilewright.Web.Storage;

/// <summary>Times are kept in UTC, and known as such when they are read.</summary>
internal sealed class UtcConverter() : ValueConverter<DateTime, DateTime>(
    time => time.ToUniversalTime(), time => DateTime.SpecifyKind(time, DateTimeKind.Utc));
