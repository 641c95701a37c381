using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using Stilewright.Measure;
using Stilewright.Teaching;
using Stilewright.Teaching.Checking;
using Stilewright.Teaching.Drills;
using Stilewright.Teaching.Telling;

namespace Stilewright.Web.Storage;

/// <summary>The database. One context for one action; none is held for the life of a page.</summary>
public sealed class StoreContext(DbContextOptions<StoreContext> options) : DbContext(options)
{
    public DbSet<StoredDocument> Documents => Set<StoredDocument>();

    public DbSet<StoredRevision> Revisions => Set<StoredRevision>();
    public DbSet<StoredMaker> Makers => Set<StoredMaker>();
    public DbSet<StoredHandOut> HandOuts => Set<StoredHandOut>();
    public DbSet<StoredAttempt> Attempts => Set<StoredAttempt>();
    public DbSet<StoredExercise> Exercises => Set<StoredExercise>();
    public DbSet<StoredTelling> Tellings => Set<StoredTelling>();

    protected override void ConfigureConventions(ModelConfigurationBuilder configurationBuilder)
    {
        configurationBuilder.Properties<DateTime>().HaveConversion<UtcConverter>();
        configurationBuilder.Properties<DocumentKind>().HaveConversion<string>().HaveMaxLength(16);
        configurationBuilder.Properties<RevisionCause>().HaveConversion<string>().HaveMaxLength(16);
        configurationBuilder.Properties<CutStage>().HaveConversion<string>().HaveMaxLength(16);
        configurationBuilder.Properties<SlipKind>().HaveConversion<string>().HaveMaxLength(24);
        configurationBuilder.Properties<ExerciseKind>().HaveConversion<string>().HaveMaxLength(16);
        configurationBuilder.Properties<DrillKind>().HaveConversion<string>().HaveMaxLength(24);
        configurationBuilder.Properties<LengthUnit>().HaveConversion<string>().HaveMaxLength(16);
        configurationBuilder.Properties<Telling>().HaveConversion<string>().HaveMaxLength(16);
    }

    protected override void OnModelCreating(ModelBuilder modelBuilder)
    {
        modelBuilder.ApplyConfiguration(new DocumentMapping());
        modelBuilder.ApplyConfiguration(new RevisionMapping());
        modelBuilder.ApplyConfiguration(new MakerMapping());
        modelBuilder.ApplyConfiguration(new HandOutMapping());
        modelBuilder.ApplyConfiguration(new AttemptMapping());
        modelBuilder.ApplyConfiguration(new ExerciseMapping());
        modelBuilder.ApplyConfiguration(new TellingMapping());
    }

    private sealed class DocumentMapping : IEntityTypeConfiguration<StoredDocument>
    {
        public void Configure(EntityTypeBuilder<StoredDocument> document)
        {
            document.ToTable("documents").HasKey(each => each.Key);
            document.Property(each => each.RecordId).HasMaxLength(80);
            document.Property(each => each.Head).IsConcurrencyToken();
            document.HasIndex(each => new { each.Kind, each.CourseKey, each.RecordId }).IsUnique();
            document.HasOne<StoredDocument>().WithMany().HasForeignKey(each => each.CourseKey).OnDelete(DeleteBehavior.Restrict);
        }
    }

    private sealed class RevisionMapping : IEntityTypeConfiguration<StoredRevision>
    {
        public void Configure(EntityTypeBuilder<StoredRevision> revision)
        {
            revision.ToTable("revisions").HasKey(each => new { each.DocumentKey, each.Number });
            revision.Property(each => each.AuthorId).HasMaxLength(40);
            revision.Property(each => each.ProgramVersion).HasMaxLength(40);
            revision.HasOne<StoredDocument>().WithMany().HasForeignKey(each => each.DocumentKey).OnDelete(DeleteBehavior.Restrict);
            revision.HasOne<StoredMaker>().WithMany().HasForeignKey(each => each.AuthorId).OnDelete(DeleteBehavior.Restrict);
        }
    }

    private sealed class MakerMapping : IEntityTypeConfiguration<StoredMaker>
    {
        public void Configure(EntityTypeBuilder<StoredMaker> maker)
        {
            maker.ToTable("makers").HasKey(each => each.Id);
            maker.Property(each => each.Id).HasMaxLength(40);
            maker.Property(each => each.Name).HasMaxLength(80);
        }
    }

    private sealed class HandOutMapping : IEntityTypeConfiguration<StoredHandOut>
    {
        public void Configure(EntityTypeBuilder<StoredHandOut> handOut)
        {
            handOut.ToTable("handed_out").HasKey(each => each.Key);
            handOut.Property(each => each.AuthorId).HasMaxLength(40);
            handOut.Property(each => each.What).HasMaxLength(200);
            handOut.HasOne<StoredDocument>().WithMany().HasForeignKey(each => each.CourseKey).OnDelete(DeleteBehavior.Restrict);
            handOut.HasOne<StoredMaker>().WithMany().HasForeignKey(each => each.AuthorId).OnDelete(DeleteBehavior.Restrict);
        }
    }

    private sealed class AttemptMapping : IEntityTypeConfiguration<StoredAttempt>
    {
        public void Configure(EntityTypeBuilder<StoredAttempt> attempt)
        {
            attempt.ToTable("attempts").HasKey(each => each.Key);
            attempt.Property(each => each.AuthorId).HasMaxLength(40);
            attempt.Property(each => each.ProjectId).HasMaxLength(80);
            attempt.Property(each => each.Leaf).HasMaxLength(80);
            attempt.HasIndex(each => new { each.CourseKey, each.AuthorId });
            attempt.HasOne<StoredDocument>().WithMany().HasForeignKey(each => each.CourseKey).OnDelete(DeleteBehavior.Restrict);
            attempt.HasOne<StoredMaker>().WithMany().HasForeignKey(each => each.AuthorId).OnDelete(DeleteBehavior.Restrict);
            attempt.OwnsMany(each => each.Causes, cause =>
            {
                cause.ToTable("attempt_causes").HasKey(each => each.Key);
                cause.WithOwner().HasForeignKey("AttemptKey");
                cause.Property(each => each.Subject).HasMaxLength(80);
            });
        }
    }

    private sealed class ExerciseMapping : IEntityTypeConfiguration<StoredExercise>
    {
        public void Configure(EntityTypeBuilder<StoredExercise> exercise)
        {
            exercise.ToTable("exercises").HasKey(each => each.Key);
            exercise.Property(each => each.AuthorId).HasMaxLength(40);
            exercise.Property(each => each.Sheet).HasMaxLength(400);
            exercise.Property(each => each.Level).HasMaxLength(200);
            exercise.HasIndex(each => new { each.CourseKey, each.AuthorId, each.Sheet }).IsUnique();
            exercise.HasOne<StoredDocument>().WithMany().HasForeignKey(each => each.CourseKey).OnDelete(DeleteBehavior.Restrict);
            exercise.HasOne<StoredMaker>().WithMany().HasForeignKey(each => each.AuthorId).OnDelete(DeleteBehavior.Restrict);
            exercise.OwnsMany(each => each.Causes, cause =>
            {
                cause.ToTable("exercise_causes").HasKey(each => each.Key);
                cause.WithOwner().HasForeignKey("ExerciseKey");
                cause.Property(each => each.Subject).HasMaxLength(80);
            });
            exercise.OwnsMany(each => each.Shares, share =>
            {
                share.ToTable("exercise_shares").HasKey(each => each.Key);
                share.WithOwner().HasForeignKey("ExerciseKey");
            });
        }
    }

    private sealed class TellingMapping : IEntityTypeConfiguration<StoredTelling>
    {
        public void Configure(EntityTypeBuilder<StoredTelling> telling)
        {
            telling.ToTable("tellings").HasKey(each => each.CourseKey);
            telling.Property(each => each.CourseKey).ValueGeneratedNever();
            telling.HasOne<StoredDocument>().WithMany().HasForeignKey(each => each.CourseKey).OnDelete(DeleteBehavior.Restrict);
        }
    }
}
